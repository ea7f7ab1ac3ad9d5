package org.wadeplan.geo.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.io.Attribute;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.Field;
import org.wadeplan.geo.io.LayerShape;

/**
 * The demo round's invented roads and tracks: one track to within each site's walk-in, and the roads on which its bridges,
 * fords and culverts lie. They meet streams nowhere else.
 */
final class DemoRoads {

    /** Site, walk-in in metres and side as in sites.csv, name of the track. */
    private static final String TRACKS = """
            BRN-01 180 right Brannet meadow track
            BRN-02 240 left Intake road
            BRN-03 2100 left Brannet forest track
            HSK-01 150 right Barn lane
            HSK-02 420 left Cattle grid road
            TOL-01 120 right Old ironworks lane
            TOL-02 90 left Flats track
            TOL-03 300 left Bend track
            OUN-01 60 left Car park lane
            OUN-02 200 left Farm lane
            OUN-02B 260 right Trust yard lane
            OUN-03 110 right Treatment works lane
            PEL-01 140 right Staithe lane
            PEL-02 210 left Saltings track
            """;

    /** Stream, place, half length in metres, kind, name: as in barriers.csv, but for the weir. */
    private static final String CROSSINGS = """
            HSK 521900,5114060 400 track Culvert track
            TOL 525450,5100550 500 track Ford track
            OUN 506945,5088255 45 footway Ounder footbridge path
            PEL 523150,5085350 900 road Pell bridge road
            """;

    private static final double TRACK_M = 700;

    private DemoRoads() {}

    static FeatureLayer layer() {
        List<Feature> features = new ArrayList<>();
        TRACKS.lines().forEach(row -> {
            String[] parts = row.split(" ", 4);
            features.add(road(features.size() + 1, parts[3], kind(parts[3]), track(parts)));
        });
        CROSSINGS.lines().forEach(row -> {
            String[] parts = row.split(" ", 5);
            features.add(road(features.size() + 1, parts[4], parts[3], crossing(parts)));
        });
        features.add(road(
                features.size() + 1,
                "Carrow road",
                "road",
                line(
                        new Coordinate(507000, 5096000),
                        new Coordinate(512400, 5096300),
                        new Coordinate(518000, 5096700))));
        return DemoGeometry.layer(
                "roads", LayerShape.Kind.LINESTRING, List.of(Field.text("road"), Field.text("kind")), features);
    }

    private static String kind(String name) {
        return name.endsWith("track") ? "track" : "road";
    }

    private static Feature road(int id, String name, String kind, LineString shape) {
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        attributes.put("road", Attribute.of(name));
        attributes.put("kind", Attribute.of(kind));
        return Feature.of(Integer.toString(id), shape, attributes);
    }

    /** Away from the stream, square to it, from where the walk begins; a bend half way. */
    private static LineString track(String[] parts) {
        Coordinate site = Objects.requireNonNull(DemoPlaces.sites().get(parts[0]));
        double walkM = Double.parseDouble(parts[1]);
        double side = parts[2].equals("left") ? 1 : -1;
        Coordinate along = DemoRelief.direction(DemoPlaces.streamOf(parts[0]), site);
        return line(
                beside(site, along, side * walkM, 0),
                beside(site, along, side * (walkM + TRACK_M / 2), TRACK_M / 20),
                beside(site, along, side * (walkM + TRACK_M), -TRACK_M / 20));
    }

    private static LineString crossing(String[] parts) {
        String[] place = parts[1].split(",", -1);
        Coordinate at = new Coordinate(Double.parseDouble(place[0]), Double.parseDouble(place[1]));
        double halfM = Double.parseDouble(parts[2]);
        Coordinate along = DemoRelief.direction(parts[0], at);
        return line(beside(at, along, -halfM, 0), at, beside(at, along, halfM, 0));
    }

    /** A place so far to the left of another, and so far on in the direction. */
    private static Coordinate beside(Coordinate at, Coordinate along, double leftM, double onM) {
        return new Coordinate(
                StrictMath.rint((at.x - along.y * leftM + along.x * onM) * 100) / 100,
                StrictMath.rint((at.y + along.x * leftM + along.y * onM) * 100) / 100);
    }

    private static LineString line(Coordinate... vertices) {
        return DemoGeometry.SHAPES.createLineString(vertices);
    }
}
