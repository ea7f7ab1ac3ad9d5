package org.wadeplan.geo.io;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.DiskException;

/**
 * Writes features as GeoJSON by RFC 7946: longitude and latitude on WGS 84 with at most 7 decimals (about 1 cm), rings
 * by the right-hand rule, no crs member.
 *
 * <p>A shape that crosses the 180th meridian is not cut there.
 */
public final class GeoJsonWriter {

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final int DECIMALS = 7;

    private final CoordinateSystem system;

    /**
     * Writes shapes that are in metres.
     *
     * @param system the system that the features' coordinates are in
     */
    public GeoJsonWriter(CoordinateSystem system) {
        this.system = system;
    }

    /**
     * Writes the features in their order.
     *
     * @throws DiskException where the file cannot be written; the one before it is then still there
     */
    public void write(Path target, List<Feature> features) throws DiskException {
        WholeFile.write(target, text(features));
    }

    /** The whole document, lines ending in a line feed on every machine. */
    public String text(List<Feature> features) {
        ObjectNode root = JSON.createObjectNode().put("type", "FeatureCollection");
        ArrayNode list = root.putArray("features");
        features.forEach(feature -> list.add(node(feature)));
        StringWriter text = new StringWriter();
        try (JsonGenerator out = JSON.createGenerator(text)) {
            out.setPrettyPrinter(new DefaultPrettyPrinter()
                    .withObjectIndenter(new com.fasterxml.jackson.core.util.DefaultIndenter(" ", "\n")));
            JSON.writeTree(out, root);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text + "\n";
    }

    private ObjectNode node(Feature feature) {
        ObjectNode node = JSON.createObjectNode().put("type", "Feature").put("id", feature.id());
        ObjectNode properties = node.putObject("properties");
        for (Map.Entry<String, Attribute> entry : feature.attributes().entrySet()) {
            put(properties, entry.getKey(), entry.getValue());
        }
        feature.geometry()
                .ifPresentOrElse(shape -> node.set("geometry", geometry(shape)), () -> node.putNull("geometry"));
        return node;
    }

    private static void put(ObjectNode properties, String name, Attribute value) {
        if (value instanceof Attribute.Text text) {
            properties.put(name, text.value());
        } else if (value instanceof Attribute.Whole whole) {
            properties.put(name, whole.value());
        } else if (value instanceof Attribute.Decimal decimal) {
            properties.put(name, decimal.value());
        } else if (value instanceof Attribute.Flag flag) {
            properties.put(name, flag.value());
        }
    }

    private ObjectNode geometry(Geometry shape) {
        return JSON.createObjectNode().put("type", shape.getGeometryType()).set("coordinates", coordinates(shape));
    }

    private ArrayNode coordinates(Geometry shape) {
        if (shape instanceof Point point) {
            return point.isEmpty() ? JSON.createArrayNode() : position(point.getCoordinate());
        }
        if (shape instanceof LineString line) {
            return positions(line.getCoordinates());
        }
        if (shape instanceof Polygon polygon) {
            return rings(polygon);
        }
        if (!shape.getGeometryType().startsWith("Multi")) {
            throw new IllegalArgumentException("GeoJSON output knows no " + shape.getGeometryType());
        }
        return parts(shape, this::coordinates);
    }

    private static ArrayNode parts(Geometry shape, Function<Geometry, ArrayNode> make) {
        ArrayNode all = JSON.createArrayNode();
        for (int part = 0; part < shape.getNumGeometries(); part++) {
            all.add(make.apply(shape.getGeometryN(part)));
        }
        return all;
    }

    private ArrayNode rings(Polygon polygon) {
        ArrayNode rings = JSON.createArrayNode();
        if (!polygon.isEmpty()) {
            rings.add(ring(polygon.getExteriorRing(), true));
        }
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
            rings.add(ring(polygon.getInteriorRingN(hole), false));
        }
        return rings;
    }

    /** Right-hand rule: the outside runs counterclockwise, holes clockwise. Source: RFC 7946, 3.1.6. */
    private ArrayNode ring(LinearRing ring, boolean counterclockwise) {
        boolean asWanted = Orientation.isCCW(ring.getCoordinateSequence()) == counterclockwise;
        return positions((asWanted ? ring : ring.reverse()).getCoordinates());
    }

    private ArrayNode positions(Coordinate[] vertices) {
        ArrayNode line = JSON.createArrayNode();
        for (Coordinate vertex : vertices) {
            line.add(position(vertex));
        }
        return line;
    }

    private ArrayNode position(Coordinate vertex) {
        LonLat at = system.toLonLat(new MetricPoint(vertex.x, vertex.y));
        return JSON.createArrayNode().add(rounded(at.lonDeg())).add(rounded(at.latDeg()));
    }

    private static BigDecimal rounded(double degrees) {
        BigDecimal number = BigDecimal.valueOf(degrees)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0, RoundingMode.UNNECESSARY) : number;
    }
}
