package org.wadeplan.geo.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import org.jspecify.annotations.Nullable;

/**
 * An {@link InventedNetwork} as a GeoPackage, with the faults that real stream files have: of a hundred lines one runs
 * upstream, one has a vertex twice, one comes in two parts; of two hundred one ends 0.1 to 5 m too early; of a thousand
 * one has a second arm beside it, one a ring at its head, and one is accompanied each by a row without a shape, by a line
 * of no length, by an empty line and by a line with a vertex that is no number.
 */
public final class InventedFile {

    /** The layer's name. */
    public static final String LAYER = "streams";

    /** The layer says that it is in this system; any metric one would do. */
    private static final int SRS = 2193;

    private static final double CELL_KM2 = 0.0169;
    private static final int BATCH = 10_000;

    private final Noise noise;
    private final PreparedStatement row;
    private double[] work = new double[512];
    private long fid;

    private InventedFile(Noise noise, PreparedStatement row) {
        this.noise = noise;
        this.row = row;
    }

    /** Writes a new file; the same number and seed give the same rows. */
    public static void write(Path target, int lines, long seed) throws IOException {
        Path half = target.resolveSibling(target.getFileName() + ".half");
        Files.deleteIfExists(half);
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + half.toUri());
                Statement statement = file.createStatement()) {
            statement.execute("PRAGMA journal_mode = OFF");
            statement.execute("PRAGMA synchronous = OFF");
            statement.execute("PRAGMA application_id = " + 0x47504B47);
            statement.execute("PRAGMA user_version = 10300");
            file.setAutoCommit(false);
            createTables(statement);
            try (PreparedStatement row = file.prepareStatement("INSERT INTO streams VALUES (?, ?, ?, ?)")) {
                InventedFile rows = new InventedFile(new Noise(seed ^ 0x5DEECE66DL), row);
                new InventedNetwork(lines, seed).each(rows::add);
                row.executeBatch();
            }
            file.commit();
        } catch (SQLException refused) {
            throw new IOException(refused.getMessage(), refused);
        }
        Files.move(half, target);
    }

    private static void createTables(Statement statement) throws SQLException {
        statement.executeUpdate("CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER PRIMARY KEY,"
                + " organization TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL,"
                + " description TEXT)");
        statement.executeUpdate("INSERT INTO gpkg_spatial_ref_sys VALUES ('metric', " + SRS + ", 'EPSG', " + SRS
                + ", 'undefined', NULL)");
        statement.executeUpdate("CREATE TABLE gpkg_contents (table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT"
                + " NULL, identifier TEXT UNIQUE, description TEXT, last_change DATETIME NOT NULL, min_x DOUBLE, min_y"
                + " DOUBLE, max_x DOUBLE, max_y DOUBLE, srs_id INTEGER)");
        statement.executeUpdate("INSERT INTO gpkg_contents VALUES ('streams', 'features', 'streams', '',"
                + " '2027-01-01T00:00:00.000Z', NULL, NULL, NULL, NULL, " + SRS + ")");
        statement.executeUpdate("CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL PRIMARY KEY, column_name"
                + " TEXT NOT NULL, geometry_type_name TEXT NOT NULL, srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m"
                + " TINYINT NOT NULL)");
        statement.executeUpdate(
                "INSERT INTO gpkg_geometry_columns VALUES ('streams', 'geom', 'GEOMETRY', " + SRS + ", 0, 0)");
        statement.executeUpdate(
                "CREATE TABLE streams (fid INTEGER PRIMARY KEY NOT NULL, geom GEOMETRY, name TEXT, upstream_km2 DOUBLE)");
    }

    private boolean happens(int use, double share) {
        return noise.of(fid, use) < share;
    }

    private void add(double[] eastNorth, int count, int cells) {
        if (work.length < 2 * count + 2) {
            work = new double[4 * count];
        }
        System.arraycopy(eastNorth, 0, work, 0, 2 * count);
        int vertices = count;
        fid++;
        if (happens(0, 0.005)) {
            endEarly(vertices);
        }
        if (happens(1, 0.01)) {
            vertices = withVertexTwice(vertices);
        }
        if (happens(2, 0.01)) {
            turnRound(vertices);
        }
        boolean inParts = vertices >= 6 && happens(3, 0.01);
        insert(inParts ? InventedBlob.twoParts(work, vertices, SRS) : line(vertices), cells);
        addCompany(eastNorth, count, cells);
    }

    private void addCompany(double[] eastNorth, int count, int cells) {
        double chance = noise.of(fid, 4);
        if (chance < 0.001) {
            fid++;
            secondArm(eastNorth, count);
            insert(line(count), cells);
        } else if (chance < 0.002) {
            fid++;
            insert(ring(eastNorth), cells);
        } else if (chance < 0.003) {
            fid++;
            insert(null, cells);
        } else if (chance < 0.004) {
            fid++;
            System.arraycopy(eastNorth, 0, work, 0, 2);
            System.arraycopy(eastNorth, 0, work, 2, 2);
            insert(line(2), cells);
        } else if (chance < 0.005) {
            fid++;
            insert(line(0), cells);
        } else if (chance < 0.006) {
            fid++;
            System.arraycopy(eastNorth, 0, work, 0, 2 * count);
            work[1] = chance < 0.0055 ? Double.NaN : Double.POSITIVE_INFINITY;
            insert(line(count), cells);
        }
    }

    private void endEarly(int count) {
        int last = 2 * count - 2;
        double east = work[last] - work[last - 2];
        double north = work[last + 1] - work[last - 1];
        double lengthM = Math.sqrt(east * east + north * north);
        double share = Math.min(0.9, (0.1 + 4.9 * noise.of(fid, 5)) / lengthM);
        work[last] -= share * east;
        work[last + 1] -= share * north;
    }

    private int withVertexTwice(int count) {
        int at = 2 * (int) (noise.of(fid, 6) * count);
        System.arraycopy(work, at, work, at + 2, 2 * count - at);
        return count + 1;
    }

    private void turnRound(int count) {
        for (int i = 0, j = count - 1; i < j; i++, j--) {
            for (int side = 0; side < 2; side++) {
                double kept = work[2 * i + side];
                work[2 * i + side] = work[2 * j + side];
                work[2 * j + side] = kept;
            }
        }
    }

    /** From the same head to the same foot, some 20 m aside between. */
    private void secondArm(double[] eastNorth, int count) {
        System.arraycopy(eastNorth, 0, work, 0, 2 * count);
        for (int i = 1; i < count - 1; i++) {
            work[2 * i] += 15;
            work[2 * i + 1] -= 15;
        }
    }

    private byte[] ring(double[] eastNorth) {
        int corners = 16;
        for (int i = 0; i <= corners; i++) {
            double angle = 2 * Math.PI * (i % corners) / corners;
            work[2 * i] = eastNorth[0] + 60 * (Math.cos(angle) - 1);
            work[2 * i + 1] = eastNorth[1] + 60 * Math.sin(angle);
        }
        return line(corners + 1);
    }

    private byte[] line(int count) {
        return InventedBlob.line(work, count, SRS);
    }

    private void insert(byte @Nullable [] blob, int cells) {
        try {
            row.setLong(1, fid);
            row.setBytes(2, blob);
            if (cells > 500) {
                row.setString(3, "Invented Water " + cells % 977);
            } else {
                row.setNull(3, Types.VARCHAR);
            }
            row.setDouble(4, cells * CELL_KM2);
            row.addBatch();
            if (fid % BATCH == 0) {
                row.executeBatch();
            }
        } catch (SQLException refused) {
            throw new IllegalStateException(refused);
        }
    }
}
