package org.wadeplan.geo.io;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.DiskException;

/**
 * Writes layers into a new GeoPackage (OGC GeoPackage 1.3), which desktop map programs open as it is.
 *
 * <p>All layers are in one coordinate system. The same layers and the same time give the same bytes.
 */
public final class GeoPackageWriter {

    /** {@code GPKG} in ASCII. */
    static final int APPLICATION_ID = 0x47504B47;

    /** Version 1.3.0, written as 10300. */
    static final int USER_VERSION = 10300;

    private static final DateTimeFormatter LAST_CHANGE = DateTimeFormatter.ofPattern(
                    "yyyy-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private final CoordinateSystem system;
    private final String lastChange;

    /**
     * @param system the system that every layer's coordinates are in
     * @param lastChange written into the file as the time of its content
     */
    public GeoPackageWriter(CoordinateSystem system, Instant lastChange) {
        this.system = system;
        this.lastChange = LAST_CHANGE.format(lastChange);
    }

    /**
     * Writes a new file, over an older one of that name only once the new one is whole.
     *
     * @throws DiskException where it cannot be written
     * @throws IllegalArgumentException where a layer says that it is in another system or has two fields of one name
     */
    public void write(Path target, List<FeatureLayer> layers) throws DiskException {
        for (FeatureLayer layer : layers) {
            if (layer.shape()
                    .crs()
                    .filter(crs -> !crs.equals(StatedSystem.code(system.code())))
                    .isPresent()) {
                throw new IllegalArgumentException(layer.shape().name() + " is in "
                        + layer.shape().crs().get().words() + ", not " + system.code());
            }
        }
        WholeFile.write(target, temporary -> fill(temporary, layers));
    }

    private void fill(Path temporary, List<FeatureLayer> layers) throws IOException {
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + temporary.toUri());
                Statement statement = file.createStatement()) {
            statement.execute("PRAGMA journal_mode = MEMORY");
            statement.execute("PRAGMA application_id = " + APPLICATION_ID);
            statement.execute("PRAGMA user_version = " + USER_VERSION);
            file.setAutoCommit(false);
            for (String command : systemTables().split(";\\s*\\n", -1)) {
                statement.executeUpdate(command);
            }
            addSystem(file);
            for (FeatureLayer layer : layers) {
                new LayerTable(file, layer, srsId()).write(lastChange);
            }
            file.commit();
        } catch (SQLException refused) {
            throw new IOException(refused.getMessage(), refused);
        }
    }

    private int srsId() {
        return Integer.parseInt(system.code().substring(system.code().indexOf(':') + 1));
    }

    private void addSystem(Connection file) throws SQLException {
        try (PreparedStatement row =
                file.prepareStatement("INSERT INTO gpkg_spatial_ref_sys VALUES (?, ?, 'EPSG', ?, ?, ?)")) {
            row.setString(1, system.name());
            row.setInt(2, srsId());
            row.setInt(3, srsId());
            row.setString(4, system.definition());
            row.setString(5, system.words());
            row.executeUpdate();
        }
    }

    private static String systemTables() {
        try (InputStream sql = GeoPackageWriter.class.getResourceAsStream("geopackage.sql")) {
            if (sql == null) {
                throw new IllegalStateException("geopackage.sql is missing from the program");
            }
            return new String(sql.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
