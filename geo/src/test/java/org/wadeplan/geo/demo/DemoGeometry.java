package org.wadeplan.geo.demo;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.GeoJsonWriter;
import org.wadeplan.geo.io.GeoPackageWriter;
import org.wadeplan.geo.io.LayerShape;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.SourcePlace;

/** The demo round's streams, catchments and parcels as features, and their files. */
final class DemoGeometry {

    static final GeometryFactory SHAPES = new GeometryFactory();
    static final Instant MADE = Instant.parse("2027-08-30T08:00:00Z");
    static final CoordinateSystem UTM27 = CoordinateSystem.named("EPSG:32627", SourcePlace.file("round.json"))
            .value()
            .orElseThrow();

    private static final long SEED = 20270906;

    private DemoGeometry() {}

    /** Writes the geometry files of a demo round into a folder that exists. */
    static void write(Path folder) throws DiskException {
        FeatureLayer streams = streams();
        geoPackage(folder.resolve("streams.gpkg"), streams);
        geoPackage(folder.resolve("catchments.gpkg"), catchments());
        geoPackage(folder.resolve("parcels.gpkg"), parcels());
        new GeoJsonWriter(UTM27).write(folder.resolve("streams.geojson"), streams.features());
        geoPackage(folder.resolve("roads.gpkg"), DemoRoads.layer());
        WholeFile.write(folder.resolve("elevation.tif"), part -> Files.write(part, elevation()));
    }

    static byte[] elevation() {
        return PlainGeoTiff.of(
                new DemoRelief().heights(),
                DemoRelief.COLUMNS,
                DemoRelief.WEST_M,
                DemoRelief.NORTH_M,
                DemoRelief.CELL_M,
                32627,
                DemoRelief.SEA);
    }

    static void geoPackage(Path file, FeatureLayer layer) throws DiskException {
        new GeoPackageWriter(UTM27, MADE).write(file, List.of(layer));
    }

    static FeatureLayer streams() {
        List<Feature> features = new ArrayList<>();
        for (DemoPlaces.ControlLine line : DemoPlaces.streams()) {
            long seed = SEED + features.size();
            List<Coordinate> vertices =
                    new Meander(line.vertices(), DemoPlaces.sites().values(), seed).vertices();
            LineString shape = SHAPES.createLineString(vertices.toArray(new Coordinate[0]));
            features.add(stream(
                    features.size() + 1, line.code(), Optional.of(line.name()), Optional.of("source-to-mouth"), shape));
        }
        return layer(
                "streams",
                LayerShape.Kind.LINESTRING,
                List.of(Field.text("code"), Field.text("name"), Field.text("catchment"), Field.text("flow")),
                features);
    }

    static Feature stream(int id, String code, Optional<String> name, Optional<String> flow, LineString shape) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        attributes.put("code", Attribute.of(code));
        name.ifPresent(words -> attributes.put("name", Attribute.of(words)));
        attributes.put("catchment", Attribute.of(code));
        flow.ifPresent(words -> attributes.put("flow", Attribute.of(words)));
        return Feature.of(Integer.toString(id), shape, attributes);
    }

    static FeatureLayer catchments() {
        List<Feature> features = new ArrayList<>();
        for (DemoPlaces.ControlLine outline : DemoPlaces.catchments()) {
            Map<String, Attribute> attributes = new LinkedHashMap<>();
            attributes.put("code", Attribute.of(outline.code()));
            attributes.put("name", Attribute.of(outline.name()));
            features.add(Feature.of(Integer.toString(features.size() + 1), polygon(outline.vertices()), attributes));
        }
        return layer("catchments", LayerShape.Kind.POLYGON, List.of(Field.text("code"), Field.text("name")), features);
    }

    /** One four-sided parcel around each site and the reach above it; that of OUN-02 is refused. */
    static FeatureLayer parcels() {
        Random random = new Random(SEED);
        List<Feature> features = new ArrayList<>();
        DemoPlaces.sites().forEach((site, at) -> {
            Map<String, Attribute> attributes = new LinkedHashMap<>();
            attributes.put("parcel", Attribute.of("L-" + site));
            attributes.put("consent_status", Attribute.of(site.equals("OUN-02") ? "refused" : "yes"));
            List<Coordinate> corners = new ArrayList<>();
            int[][] sides = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
            for (int[] side : sides) {
                corners.add(new Coordinate(
                        at.x + side[0] * (220 + random.nextInt(120)), at.y + side[1] * (220 + random.nextInt(120))));
            }
            features.add(Feature.of(Integer.toString(features.size() + 1), polygon(corners), attributes));
        });
        return layer(
                "parcels",
                LayerShape.Kind.POLYGON,
                List.of(Field.text("parcel"), Field.text("consent_status")),
                features);
    }

    private static Polygon polygon(List<Coordinate> outline) {
        List<Coordinate> ring = new ArrayList<>(outline);
        ring.add(outline.get(0));
        return SHAPES.createPolygon(ring.toArray(new Coordinate[0]));
    }

    static FeatureLayer layer(String name, LayerShape.Kind kind, List<Field> fields, List<Feature> features) {
        return new FeatureLayer(
                new LayerShape(name, Optional.of(StatedSystem.code(UTM27.code())), kind, fields), features);
    }
}
