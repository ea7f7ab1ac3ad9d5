package org.wadeplan.geo.io;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.LayerShape.Kind;

/** What the system tables of an open GeoPackage say about one layer. */
record LayerColumns(Connection connection, String layer) {

    record Column(String name, String type, boolean primaryKey) {

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

    record GeometryColumn(Optional<String> name, Kind kind, Optional<StatedSystem> crs) {}

    List<Column> columns() throws SQLException {
        return columnsOf(layer);
    }

    private List<Column> columnsOf(String table) throws SQLException {
        List<Column> columns = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("PRAGMA table_info(" + LayerTable.quoted(table) + ")")) {
            while (rows.next()) {
                columns.add(new Column(
                        rows.getString("name"),
                        rows.getString("type").toUpperCase(Locale.ROOT),
                        rows.getInt("pk") == 1));
            }
        }
        return columns;
    }

    GeometryColumn geometry() throws SQLException {
        String newer = newerDefinitionColumn();
        String sql = "SELECT g.column_name, g.geometry_type_name, s.organization, s.organization_coordsys_id,"
                + " s.definition, " + newer + " FROM gpkg_geometry_columns g"
                + " LEFT JOIN gpkg_spatial_ref_sys s ON s.srs_id = g.srs_id WHERE lower(g.table_name) = lower(?)";
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.setString(1, layer);
            try (ResultSet row = statement.executeQuery()) {
                if (!row.next()) {
                    return new GeometryColumn(Optional.empty(), Kind.NONE, Optional.empty());
                }
                boolean epsg = "EPSG".equalsIgnoreCase(row.getString(3));
                Optional<String> code = epsg ? Optional.of("EPSG:" + row.getInt(4)) : Optional.empty();
                return new GeometryColumn(
                        Optional.of(row.getString(1)),
                        kind(row.getString(2)),
                        StatedSystem.of(code, definition(row.getString(5), row.getString(6))));
            }
        }
    }

    /** The extension for the newer well-known text adds a column. Source: OGC GeoPackage 1.3, annex F.10. */
    private String newerDefinitionColumn() throws SQLException {
        return columnsOf("gpkg_spatial_ref_sys").stream()
                .map(Column::name)
                .filter("definition_12_063"::equalsIgnoreCase)
                .findFirst()
                .map(name -> "s." + LayerTable.quoted(name))
                .orElse("NULL");
    }

    private static Optional<String> definition(@Nullable String older, @Nullable String newer) {
        return Optional.ofNullable(older)
                .filter(text -> !text.isBlank() && !text.strip().equalsIgnoreCase("undefined"))
                .or(() -> Optional.ofNullable(newer));
    }

    private static Kind kind(@Nullable String name) {
        for (Kind kind : Kind.values()) {
            if (kind.name().equalsIgnoreCase(name)) {
                return kind;
            }
        }
        return Kind.GEOMETRY;
    }

    /** The box that the system tables state; empty where they do not. */
    Optional<Envelope> extent() throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(
                "SELECT min_x, max_x, min_y, max_y FROM gpkg_contents WHERE lower(table_name) = lower(?)")) {
            statement.setString(1, layer);
            try (ResultSet row = statement.executeQuery()) {
                boolean stated = row.next() && row.getObject(1) != null && row.getObject(3) != null;
                return stated
                        ? Optional.of(
                                new Envelope(row.getDouble(1), row.getDouble(2), row.getDouble(3), row.getDouble(4)))
                        : Optional.empty();
            }
        }
    }

    /** The name of the layer's spatial index; empty where it has none. Source: OGC GeoPackage 1.3, annex F.3. */
    Optional<String> spatialIndex(String geometryColumn) throws SQLException {
        String name = "rtree_" + layer + "_" + geometryColumn;
        try (PreparedStatement statement =
                connection.prepareStatement("SELECT name FROM sqlite_master WHERE lower(name) = lower(?)")) {
            statement.setString(1, name);
            try (ResultSet row = statement.executeQuery()) {
                return row.next() ? Optional.of(row.getString(1)) : Optional.empty();
            }
        }
    }
}
