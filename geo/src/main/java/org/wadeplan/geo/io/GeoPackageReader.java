package org.wadeplan.geo.io;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Envelope;
import org.sqlite.SQLiteConfig;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads layers of a GeoPackage, row by row, without ever writing to the file or beside it.
 *
 * <p>Rows come in the order of their row numbers. Shapes stay in the layer's own coordinate system.
 */
public final class GeoPackageReader {

    private final Path file;
    private final SourcePlace place;

    /**
     * @param file the GeoPackage
     * @param place how problems name it: its name relative to the round folder
     */
    public GeoPackageReader(Path file, SourcePlace place) {
        this.file = file;
        this.place = place;
    }

    /** The names of all layers and tables of features, sorted. */
    public Checked<List<String>> layers() {
        return opened(connection -> Checked.of(LayerRows.names(connection)));
    }

    /** A whole layer. */
    public Checked<FeatureLayer> read(String layer) {
        List<Feature> features = new ArrayList<>();
        return each(layer, features::add).map(shape -> new FeatureLayer(shape, features));
    }

    /**
     * Hands over one feature after the other, so that a national file need not fit into memory.
     *
     * @param layer its name, in any mix of upper and lower case
     * @param sink gets every feature, those without a shape too
     * @return what the layer is, with a problem for every shape that could not be read
     */
    public Checked<LayerShape> each(String layer, Consumer<Feature> sink) {
        return each(layer, taking(sink), Optional.empty());
    }

    /**
     * Hands over the features whose box touches the box asked for; those without a shape are left out.
     *
     * @param box in the layer's own coordinate system, easting or longitude first
     * @return what the layer is, with a note on whether the file's spatial index was used; both ways give the same features
     */
    public Checked<LayerShape> each(String layer, Envelope box, Consumer<Feature> sink) {
        return each(layer, taking(sink), Optional.of(box));
    }

    Checked<LayerShape> each(String layer, FeatureSink sink, Optional<Envelope> box) {
        return through(layer, (connection, name) -> new LayerRows(connection, name, place).each(sink, box));
    }

    /** What to do with a layer of an open file, under the name that it has there. */
    @FunctionalInterface
    interface LayerReading<T> {
        Checked<T> read(Connection connection, String name) throws SQLException;
    }

    /** Reads something else than features from a layer, through the same door that never writes. */
    <T> Checked<T> through(String layer, LayerReading<T> reading) {
        return opened(connection -> {
            List<String> names = LayerRows.names(connection);
            Optional<String> name = names.stream()
                    .filter(known -> known.equalsIgnoreCase(layer))
                    .findFirst();
            return name.isPresent() ? reading.read(connection, name.get()) : Checked.failed(missing(layer, names));
        });
    }

    private static FeatureSink taking(Consumer<Feature> sink) {
        return new FeatureSink() {
            @Override
            public boolean begins(LayerShape shape) {
                return true;
            }

            @Override
            public void take(Feature feature) {
                sink.accept(feature);
            }
        };
    }

    /** Where a layer lies, as the file states it; no value where it does not. */
    Checked<Extent> extent(String layer) {
        return opened(connection -> {
            LayerColumns tables = new LayerColumns(connection, layer);
            Optional<Envelope> box = tables.extent();
            return box.isEmpty()
                    ? Checked.failed(List.of())
                    : Checked.of(new Extent(box.get(), tables.geometry().crs()));
        });
    }

    /** The names of the layers that have shapes, sorted. */
    Checked<List<String>> shapeLayers() {
        return opened(connection -> Checked.of(LayerRows.shapeLayers(connection)));
    }

    private Problem missing(String layer, List<String> names) {
        return Problem.error(
                "layer-missing",
                place,
                "there is no layer \"" + layer + "\"",
                names.isEmpty() ? "a file with that layer; this one has none" : "one of " + String.join(", ", names),
                "name the layer that holds the data, or rename it to " + layer);
    }

    @FunctionalInterface
    private interface Reading<T> {
        Checked<T> read(Connection connection) throws SQLException;
    }

    private <T> Checked<T> opened(Reading<T> reading) {
        Optional<Problem> unfit = FileCheck.geoPackage(file, place);
        if (unfit.isPresent()) {
            return Checked.failed(unfit.get());
        }
        // Immutable: SQLite then takes no lock and makes no journal, so a read-only folder is no hindrance.
        String url = "jdbc:sqlite:" + file.toUri() + "?immutable=1";
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        try (Connection connection = DriverManager.getConnection(url, config.toProperties())) {
            if (!isGeoPackage(connection)) {
                return Checked.failed(Problem.error(
                        "not-geopackage",
                        place,
                        "the file is an SQLite database, but it lacks the tables of a GeoPackage",
                        "a GeoPackage (.gpkg)",
                        "export the layer again as GeoPackage"));
            }
            return reading.read(connection).with(openElsewhere());
        } catch (SQLException damaged) {
            return Checked.failed(Problem.error(
                    "geopackage-damaged",
                    place,
                    "the file is damaged inside and cannot be read",
                    "a whole GeoPackage",
                    "copy it again from where it came from, or export the layer again"));
        }
    }

    private static boolean isGeoPackage(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet count = statement.executeQuery("SELECT count(*) FROM sqlite_master WHERE name IN"
                        + " ('gpkg_contents', 'gpkg_geometry_columns', 'gpkg_spatial_ref_sys')")) {
            return count.getInt(1) == 3;
        }
    }

    private List<Problem> openElsewhere() {
        Path pending = file.resolveSibling(file.getFileName() + "-wal");
        if (!Files.exists(pending) || pending.toFile().length() == 0) {
            return List.of();
        }
        return List.of(Problem.warning(
                "geopackage-open-elsewhere",
                place,
                "another program has it open and has changes that are not in the file yet; they were not read",
                "a file that no program is changing",
                "close it in the map program, then run this again"));
    }
}
