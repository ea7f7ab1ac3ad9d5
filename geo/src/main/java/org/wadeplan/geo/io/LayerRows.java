package org.wadeplan.geo.io;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** The rows of one layer in an open GeoPackage. */
final class LayerRows {

    private final Connection connection;
    private final String layer;
    private final SourcePlace place;
    private final List<Problem> problems = new ArrayList<>();

    LayerRows(Connection connection, String layer, SourcePlace place) {
        this.connection = connection;
        this.layer = layer;
        this.place = place;
    }

    static List<String> names(Connection connection) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT table_name FROM gpkg_contents"
                        + " WHERE data_type IN ('features', 'attributes') ORDER BY table_name")) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }

    private record Column(String name, String type, boolean primaryKey) {

        boolean isBlob() {
            return type.startsWith("BLOB");
        }

        Field field() {
            if (type.contains("BOOL")) {
                return Field.flag(name);
            }
            if (type.contains("INT")) {
                return Field.whole(name);
            }
            boolean decimal = type.contains("REAL") || type.contains("DOUB") || type.contains("FLOA");
            return decimal ? Field.decimal(name) : Field.text(name);
        }
    }

    private record GeometryColumn(Optional<String> name, Kind kind, Optional<String> crs) {}

    Checked<LayerShape> each(Consumer<Feature> sink) throws SQLException {
        GeometryColumn geometry = geometryColumn();
        List<Column> columns = columns();
        // Views have no key: their rows are numbered as they come.
        String key = columns.stream()
                .filter(Column::primaryKey)
                .map(column -> LayerTable.quoted(column.name()))
                .findFirst()
                .orElse("row_number() OVER ()");
        List<Column> values = columns.stream()
                .filter(column -> !column.primaryKey() && !geometry.name().equals(Optional.of(column.name())))
                .filter(this::canBeKept)
                .toList();
        String sql = "SELECT " + key + ", "
                + geometry.name().map(LayerTable::quoted).orElse("NULL")
                + String.join(
                        "",
                        values.stream()
                                .map(value -> ", " + LayerTable.quoted(value.name()))
                                .toList())
                + " FROM " + LayerTable.quoted(layer) + " ORDER BY 1";
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
                sink.accept(feature(row, values));
            }
        }
        List<Field> fields = values.stream().map(Column::field).toList();
        return Checked.of(new LayerShape(layer, geometry.crs(), geometry.kind(), fields), problems);
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

    private List<Column> columns() throws SQLException {
        List<Column> columns = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("PRAGMA table_info(" + LayerTable.quoted(layer) + ")")) {
            while (rows.next()) {
                columns.add(new Column(
                        rows.getString("name"),
                        rows.getString("type").toUpperCase(Locale.ROOT),
                        rows.getInt("pk") == 1));
            }
        }
        return columns;
    }

    private GeometryColumn geometryColumn() throws SQLException {
        String sql = "SELECT g.column_name, g.geometry_type_name, s.organization, s.organization_coordsys_id"
                + " FROM gpkg_geometry_columns g JOIN gpkg_spatial_ref_sys s ON s.srs_id = g.srs_id"
                + " WHERE lower(g.table_name) = lower(?)";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setString(1, layer);
            try (ResultSet row = statement.executeQuery()) {
                if (!row.next()) {
                    return new GeometryColumn(Optional.empty(), Kind.NONE, Optional.empty());
                }
                boolean epsg = row.getString(3).equalsIgnoreCase("EPSG");
                return new GeometryColumn(
                        Optional.of(row.getString(1)),
                        kind(row.getString(2)),
                        epsg ? Optional.of("EPSG:" + row.getInt(4)) : Optional.empty());
            }
        }
    }

    private static Kind kind(String name) {
        for (Kind kind : Kind.values()) {
            if (kind.name().equalsIgnoreCase(name)) {
                return kind;
            }
        }
        return Kind.GEOMETRY;
    }
}
