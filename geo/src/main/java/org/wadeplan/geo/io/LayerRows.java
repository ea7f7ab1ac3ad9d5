package org.wadeplan.geo.io;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.wadeplan.geo.io.LayerColumns.Column;
import org.wadeplan.geo.io.LayerColumns.GeometryColumn;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** The rows of one layer in an open GeoPackage. */
final class LayerRows {

    private final Connection connection;
    private final String layer;
    private final SourcePlace place;
    private final Findings problems;

    LayerRows(Connection connection, String layer, SourcePlace place) {
        this.connection = connection;
        this.layer = layer;
        this.place = place;
        this.problems = new Findings(place);
    }

    /** Layers and plain tables, sorted. */
    static List<String> names(Connection connection) throws SQLException {
        return names(connection, "data_type IN ('features', 'attributes')");
    }

    /** Layers with shapes only, sorted. */
    static List<String> shapeLayers(Connection connection) throws SQLException {
        return names(connection, "data_type = 'features'");
    }

    private static List<String> names(Connection connection, String condition) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT table_name FROM gpkg_contents" + " WHERE " + condition + " ORDER BY table_name")) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }

    Checked<LayerShape> each(FeatureSink sink, Optional<Envelope> box) throws SQLException {
        LayerColumns tables = new LayerColumns(connection, layer);
        GeometryColumn geometry = tables.geometry();
        List<Column> columns = tables.columns();
        List<Column> values = columns.stream()
                .filter(column -> !column.primaryKey() && !geometry.name().equals(Optional.of(column.name())))
                .filter(this::canBeKept)
                .toList();
        LayerShape shape = new LayerShape(
                layer,
                geometry.crs(),
                geometry.kind(),
                values.stream().map(Column::field).toList());
        if (sink.begins(shape)) {
            Optional<String> key = columns.stream()
                    .filter(Column::primaryKey)
                    .map(Column::name)
                    .findFirst();
            Optional<String> index =
                    box.isPresent() && key.isPresent() && geometry.name().isPresent()
                            ? tables.spatialIndex(geometry.name().get())
                            : Optional.empty();
            box.ifPresent(asked -> problems.add(howSought(index)));
            try (PreparedStatement statement = connection.prepareStatement(sql(key, geometry.name(), values, index))) {
                if (index.isPresent()) {
                    setBox(statement, box.orElseThrow());
                }
                rows(statement, values, box, sink);
            }
        }
        return Checked.of(shape, problems.all());
    }

    private String sql(Optional<String> key, Optional<String> geometry, List<Column> values, Optional<String> index) {
        StringBuilder sql = new StringBuilder("SELECT ")
                // Views have no key: their rows are numbered as they come.
                .append(key.map(LayerTable::quoted).orElse("row_number() OVER ()"))
                .append(", ")
                .append(geometry.map(LayerTable::quoted).orElse("NULL"));
        values.forEach(value -> sql.append(", ").append(LayerTable.quoted(value.name())));
        sql.append(" FROM ").append(LayerTable.quoted(layer));
        index.ifPresent(name -> sql.append(" WHERE ")
                .append(LayerTable.quoted(key.orElseThrow()))
                .append(" IN (SELECT id FROM ")
                .append(LayerTable.quoted(name))
                .append(" WHERE minx <= ? AND maxx >= ? AND miny <= ? AND maxy >= ?)"));
        return sql.append(" ORDER BY 1").toString();
    }

    private static void setBox(PreparedStatement statement, Envelope box) throws SQLException {
        statement.setDouble(1, box.getMaxX());
        statement.setDouble(2, box.getMinX());
        statement.setDouble(3, box.getMaxY());
        statement.setDouble(4, box.getMinY());
    }

    private void rows(PreparedStatement statement, List<Column> values, Optional<Envelope> box, FeatureSink sink)
            throws SQLException {
        try (ResultSet row = statement.executeQuery()) {
            while (row.next()) {
                Feature feature = feature(row, values);
                // The index keeps boxes rounded outwards: asked again here, both ways give the same features.
                boolean asked = box.map(near -> feature.geometry()
                                .filter(shape -> near.intersects(shape.getEnvelopeInternal()))
                                .isPresent())
                        .orElse(true);
                if (asked) {
                    sink.take(feature);
                }
            }
        }
    }

    private Problem howSought(Optional<String> index) {
        return index.map(name -> Problem.note(
                        "box-by-index", place.row(layer), "the file's spatial index was used, " + name, "", ""))
                .orElseGet(() -> Problem.note(
                        "box-by-scan",
                        place.row(layer),
                        "the layer has no spatial index; every feature was looked at",
                        "",
                        "nothing; a spatial index made in a map program would make this quicker"));
    }

    private boolean canBeKept(Column column) {
        if (column.isBlob()) {
            problems.add(Problem.note(
                    "column-left-out",
                    place.row(layer).column(column.name()),
                    "the column holds raw bytes, which mean nothing here; it was left out",
                    "text, numbers or yes and no",
                    "nothing, unless the column is needed"));
        }
        return !column.isBlob();
    }

    private Feature feature(ResultSet row, List<Column> values) throws SQLException {
        String id = String.valueOf(row.getObject(1));
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        for (int i = 0; i < values.size(); i++) {
            Column column = values.get(i);
            attribute(row.getObject(i + 3), column).ifPresent(value -> attributes.put(column.name(), value));
        }
        return new Feature(id, geometry(row.getBytes(2), id), attributes);
    }

    private Optional<Geometry> geometry(byte @Nullable [] blob, String id) {
        if (blob == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(GeometryBlob.decode(blob));
        } catch (ParseException broken) {
            problems.add(Problem.error(
                    "geometry-unreadable",
                    place.row(layer + " feature " + id),
                    "its shape " + broken.getMessage(),
                    "a line, point or area as the GeoPackage standard stores it",
                    "draw or export this feature again"));
            return Optional.empty();
        }
    }

    private static Optional<Attribute> attribute(@Nullable Object value, Column column) {
        if (value instanceof Number number && column.field().type() == Field.Type.FLAG) {
            return Optional.of(Attribute.of(number.longValue() != 0));
        }
        if (value instanceof Double || value instanceof Float) {
            double decimal = ((Number) value).doubleValue();
            return Double.isFinite(decimal) ? Optional.of(Attribute.of(decimal)) : Optional.empty();
        }
        if (value instanceof Number number) {
            boolean decimal = column.field().type() == Field.Type.DECIMAL;
            return Optional.of(decimal ? Attribute.of(number.doubleValue()) : Attribute.of(number.longValue()));
        }
        return value instanceof String text ? Optional.of(Attribute.of(text)) : Optional.empty();
    }
}
