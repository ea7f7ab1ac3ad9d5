package org.wadeplan.geo.io;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wadeplan.geo.lines.LineReading;
import org.wadeplan.geo.lines.LineReading.LeftOut;
import org.wadeplan.geo.lines.LineReading.Reason;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.lines.WkbLines;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads a layer's lines straight into arrays: the quick way for a whole country, without attributes and without a shape
 * object for any line.
 *
 * <p>Coordinates are taken as they are, so the layer must already be in the metric system; the caller sees to that. A
 * feature's id is its row number; several parts of a feature become {@code 17/1}, {@code 17/2} …. Opens the file as
 * {@link GeoPackageReader} does, never writing to it or beside it.
 */
public final class GeoPackageLines {

    private static final int EXTENDED = 0b100000;
    private static final int EMPTY = 0b10000;

    /** Features of one kind of fault that a message names; the reading lists all of them. */
    private static final int NAMED = 5;

    private final Path file;
    private final SourcePlace place;

    /**
     * @param file the GeoPackage
     * @param place how problems name it: its name relative to the round folder
     */
    public GeoPackageLines(Path file, SourcePlace place) {
        this.file = file;
        this.place = place;
    }

    /**
     * All lines of a layer, by rising row number.
     *
     * @param layer its name, in any mix of upper and lower case
     * @return the lines, with one warning for each kind of shape that was left out
     */
    public Checked<LineReading> read(String layer) {
        return new GeoPackageReader(file, place)
                .through(layer, (connection, name) -> reported(layer, lines(connection, name)));
    }

    private LineReading lines(Connection connection, String layer) throws SQLException {
        WkbLines walk = new WkbLines(new LineSetBuilder());
        String sql = "SELECT " + key(connection, layer) + ", " + shapeColumn(connection, layer) + " FROM "
                + LayerTable.quoted(layer) + " ORDER BY 1";
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
                add(walk, Long.toString(row.getLong(1)), row.getBytes(2));
            }
        }
        return walk.finished();
    }

    private static void add(WkbLines walk, String id, byte @Nullable [] blob) {
        if (blob == null) {
            walk.leaveOut(id, Reason.NO_SHAPE);
        } else if (blob.length < 8 || blob[0] != 'G' || blob[1] != 'P' || isStrange(blob[3])) {
            walk.leaveOut(id, Reason.UNREADABLE);
        } else if ((blob[3] & EMPTY) != 0) {
            walk.leaveOut(id, Reason.EMPTY);
        } else {
            walk.add(id, blob, 8 + envelopeBytes((blob[3] >> 1) & 0b111));
        }
    }

    private static boolean isStrange(int flags) {
        return (flags & EXTENDED) != 0 || ((flags >> 1) & 0b111) > 4;
    }

    /** Source: OGC GeoPackage 1.3, clause 2.1.3: none, xy, xyz, xym, xyzm. */
    private static int envelopeBytes(int indicator) {
        return switch (indicator) {
            case 0 -> 0;
            case 1 -> 32;
            case 4 -> 64;
            default -> 48;
        };
    }

    /**
     * The column that holds the rows' numbers, which the standard asks for. A view has none: its rows are numbered as they
     * come, as are those of a table whose key is something else.
     */
    private static String key(Connection connection, String layer) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(
                "SELECT name FROM pragma_table_info(?) WHERE pk = 1 AND upper(type) = 'INTEGER'")) {
            statement.setString(1, layer);
            try (ResultSet row = statement.executeQuery()) {
                return row.next() ? LayerTable.quoted(row.getString(1)) : "row_number() OVER ()";
            }
        }
    }

    private static String shapeColumn(Connection connection, String layer) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(
                "SELECT column_name FROM gpkg_geometry_columns WHERE lower(table_name) = lower(?)")) {
            statement.setString(1, layer);
            try (ResultSet row = statement.executeQuery()) {
                return row.next() ? LayerTable.quoted(row.getString(1)) : "NULL";
            }
        }
    }

    private Checked<LineReading> reported(String layer, LineReading reading) {
        List<Problem> problems = new ArrayList<>();
        for (Map.Entry<Reason, Integer> each : reading.counts().entrySet()) {
            problems.add(Problem.warning(
                    "lines-left-out",
                    place.row(layer),
                    each.getValue() + " of its shapes " + each.getKey().words() + ": "
                            + named(reading, each.getKey(), each.getValue()),
                    "lines of two or more different vertices",
                    "nothing, if no stream is missing; else draw these features again"));
        }
        return Checked.of(reading, problems);
    }

    private static String named(LineReading reading, Reason reason, int count) {
        String ids = reading.leftOut().stream()
                .filter(each -> each.reason() == reason)
                .limit(NAMED)
                .map(LeftOut::id)
                .collect(Collectors.joining(", "));
        return (count == 1 ? "feature " : "features ")
                + ids
                + (count > NAMED ? " and " + (count - NAMED) + " more" : "");
    }
}
