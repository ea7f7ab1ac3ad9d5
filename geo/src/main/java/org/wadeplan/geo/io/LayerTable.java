package org.wadeplan.geo.io;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.io.LayerShape.Kind;

/** One layer's own table in a GeoPackage that is being written, and its lines in the system tables. */
final class LayerTable {

    static final String GEOMETRY_COLUMN = "geom";

    private final Connection file;
    private final FeatureLayer layer;
    private final LayerShape shape;
    private final int srsId;

    LayerTable(Connection file, FeatureLayer layer, int srsId) {
        this.file = file;
        this.layer = layer;
        this.shape = layer.shape();
        this.srsId = srsId;
    }

    void write(String lastChange) throws SQLException {
        create();
        register(lastChange);
        insert();
    }

    private void create() throws SQLException {
        String columns = shape.fields().stream()
                .map(field -> ", " + quoted(field.name()) + " " + sqlType(field.type()))
                .collect(Collectors.joining());
        String geometry = hasGeometry() ? ", " + GEOMETRY_COLUMN + " " + shape.kind() : "";
        try (Statement statement = file.createStatement()) {
            statement.executeUpdate("CREATE TABLE " + quoted(shape.name())
                    + " (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL" + geometry + columns + ")");
        }
    }

    private boolean hasGeometry() {
        return shape.kind() != Kind.NONE;
    }

    private void register(String lastChange) throws SQLException {
        Envelope extent = new Envelope();
        layer.features().forEach(feature -> feature.geometry()
                .ifPresent(geometry -> extent.expandToInclude(geometry.getEnvelopeInternal())));
        String sql = "INSERT INTO gpkg_contents (table_name, data_type, identifier, last_change, min_x, min_y, max_x,"
                + " max_y, srs_id) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";
        try (PreparedStatement row = file.prepareStatement(sql)) {
            row.setString(1, shape.name());
            row.setString(2, hasGeometry() ? "features" : "attributes");
            row.setString(3, shape.name());
            row.setString(4, lastChange);
            double[] box = {extent.getMinX(), extent.getMinY(), extent.getMaxX(), extent.getMaxY()};
            for (int side = 0; side < box.length; side++) {
                if (extent.isNull()) {
                    row.setNull(5 + side, Types.DOUBLE);
                } else {
                    row.setDouble(5 + side, box[side]);
                }
            }
            row.setInt(9, hasGeometry() ? srsId : 0);
            row.executeUpdate();
        }
        if (hasGeometry()) {
            registerGeometry();
        }
    }

    private void registerGeometry() throws SQLException {
        try (PreparedStatement row =
                file.prepareStatement("INSERT INTO gpkg_geometry_columns VALUES (?, ?, ?, ?, 0, 0)")) {
            row.setString(1, shape.name());
            row.setString(2, GEOMETRY_COLUMN);
            row.setString(3, shape.kind().name());
            row.setInt(4, srsId);
            row.executeUpdate();
        }
    }

    private void insert() throws SQLException {
        List<Field> fields = shape.fields();
        String names = fields.stream().map(field -> ", " + quoted(field.name())).collect(Collectors.joining());
        int count = fields.size() + (hasGeometry() ? 2 : 1);
        String sql = "INSERT INTO " + quoted(shape.name()) + " (fid" + (hasGeometry() ? ", " + GEOMETRY_COLUMN : "")
                + names + ") VALUES (" + String.join(", ", Collections.nCopies(count, "?")) + ")";
        try (PreparedStatement row = file.prepareStatement(sql)) {
            int number = 1;
            for (Feature feature : layer.features()) {
                row.setInt(1, number++);
                int column = 2;
                if (hasGeometry()) {
                    setGeometry(row, column++, feature);
                }
                for (Field field : fields) {
                    set(row, column++, feature.attribute(field.name()));
                }
                row.addBatch();
            }
            row.executeBatch();
        }
    }

    private void setGeometry(PreparedStatement row, int column, Feature feature) throws SQLException {
        if (feature.geometry().isEmpty()) {
            row.setNull(column, Types.BLOB);
            return;
        }
        String type = feature.geometry().get().getGeometryType().toUpperCase(Locale.ROOT);
        if (shape.kind() != Kind.GEOMETRY && !type.equals(shape.kind().name())) {
            throw new IllegalArgumentException(
                    "Layer " + shape.name() + " holds " + shape.kind() + ", and " + feature.id() + " is a " + type);
        }
        row.setBytes(column, GeometryBlob.encode(feature.geometry().get(), srsId));
    }

    private static void set(PreparedStatement row, int column, Optional<Attribute> value) throws SQLException {
        if (value.isEmpty()) {
            row.setNull(column, Types.NULL);
            return;
        }
        Attribute attribute = value.get();
        if (attribute instanceof Attribute.Text text) {
            row.setString(column, text.value());
        } else if (attribute instanceof Attribute.Whole whole) {
            row.setLong(column, whole.value());
        } else if (attribute instanceof Attribute.Decimal decimal) {
            row.setDouble(column, decimal.value());
        } else if (attribute instanceof Attribute.Flag flag) {
            row.setInt(column, flag.value() ? 1 : 0);
        }
    }

    private static String sqlType(Field.Type type) {
        return switch (type) {
            case TEXT -> "TEXT";
            case WHOLE -> "INTEGER";
            case DECIMAL -> "DOUBLE";
            case FLAG -> "BOOLEAN";
        };
    }

    static String quoted(String name) {
        return "\"" + name.replace("\"", "\"\"") + "\"";
    }
}
