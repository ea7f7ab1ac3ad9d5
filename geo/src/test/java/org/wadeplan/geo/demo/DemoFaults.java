package org.wadeplan.geo.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.problem.DiskException;

/** The map files with planted faults, scenario section 4.10. */
final class DemoFaults {

    private static final double GAP_M = 12;

    private DemoFaults() {}

    /** Writes them into a folder that exists. */
    static void write(Path folder) throws DiskException, IOException {
        Path streams = folder.resolve("streams.gpkg");
        DemoGeometry.geoPackage(
                streams,
                DemoGeometry.layer(
                        "streams",
                        org.wadeplan.geo.io.LayerShape.Kind.LINESTRING,
                        DemoGeometry.streams().shape().fields(),
                        planted()));
        byte[] whole = Files.readAllBytes(streams);
        WholeFile.write(folder.resolve("truncated.gpkg"), part -> Files.write(part, Arrays.copyOf(whole, 20_000)));
        WholeFile.write(folder.resolve("empty.gpkg"), "");
        WholeFile.write(folder.resolve("streams_wrongcrs.geojson"), metresAsDegrees());
    }

    /** OUN drawn mouth to source with no flow stated, HSK with a gap, TOL with a spike, PEL without a name. */
    static List<Feature> planted() {
        List<Feature> planted = new ArrayList<>();
        for (Feature feature : DemoGeometry.streams().features()) {
            LineString line = (LineString) feature.geometry().orElseThrow();
            String code = feature.text("code").orElseThrow();
            Optional<String> name = code.equals("PEL") ? Optional.empty() : feature.text("name");
            Optional<String> flow = code.equals("OUN") ? Optional.empty() : feature.text("flow");
            for (LineString shape : faulty(code, line)) {
                planted.add(DemoGeometry.stream(planted.size() + 1, code, name, flow, shape));
            }
        }
        return planted;
    }

    private static List<LineString> faulty(String code, LineString line) {
        return switch (code) {
            case "OUN" -> List.of(line.reverse());
            case "HSK" -> gap(line);
            case "TOL" -> List.of(spike(line));
            default -> List.of(line);
        };
    }

    /** Parts the line in the middle of a segment, three quarters down, where no site is near. */
    private static List<LineString> gap(LineString line) {
        List<Coordinate> vertices = Arrays.asList(line.getCoordinates());
        int at = vertices.size() * 3 / 4;
        while (vertices.get(at).distance(vertices.get(at + 1)) < GAP_M + 1) {
            at++;
        }
        Coordinate from = vertices.get(at);
        Coordinate to = vertices.get(at + 1);
        double lengthM = from.distance(to);
        List<Coordinate> upper = new ArrayList<>(vertices.subList(0, at + 1));
        upper.add(between(from, to, (lengthM - GAP_M) / 2 / lengthM));
        List<Coordinate> lower = new ArrayList<>(vertices.subList(at + 1, vertices.size()));
        lower.add(0, between(from, to, (lengthM + GAP_M) / 2 / lengthM));
        return List.of(line(upper), line(lower));
    }

    private static Coordinate between(Coordinate from, Coordinate to, double share) {
        return new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    }

    /** Half way down, one more vertex 180 m off to the north. */
    private static LineString spike(LineString line) {
        List<Coordinate> vertices = new ArrayList<>(Arrays.asList(line.getCoordinates()));
        int at = vertices.size() / 2;
        Coordinate tip = between(vertices.get(at), vertices.get(at + 1), 0.5);
        vertices.add(at + 1, new Coordinate(tip.x, tip.y + 180));
        return line(vertices);
    }

    private static LineString line(List<Coordinate> vertices) {
        return DemoGeometry.SHAPES.createLineString(vertices.toArray(new Coordinate[0]));
    }

    /** Metres where degrees must stand. A yard drain comes first, so that the file begins at the depot. */
    private static String metresAsDegrees() {
        List<String> features = new ArrayList<>();
        features.add(metres("YRD", "Yard drain", "[512400, 5096300], [512420, 5096900], [512300, 5098000]"));
        for (DemoPlaces.ControlLine stream : DemoPlaces.streams()) {
            String positions = stream.vertices().stream()
                    .map(at -> String.format(Locale.ROOT, "[%.0f, %.0f]", at.x, at.y))
                    .collect(Collectors.joining(", "));
            features.add(metres(stream.code(), stream.name(), positions));
        }
        return "{\n \"type\": \"FeatureCollection\",\n \"features\": [\n" + String.join(",\n", features) + "\n ]\n}\n";
    }

    private static String metres(String code, String name, String positions) {
        return String.format(
                        Locale.ROOT,
                        "  {\"type\": \"Feature\", \"id\": \"%s\", \"properties\": {\"code\": \"%s\", \"name\": \"%s\","
                                + " \"catchment\": \"%s\"},%n   \"geometry\": {\"type\": \"LineString\", \"coordinates\": [%s]}}",
                        code,
                        code,
                        name,
                        code.equals("YRD") ? "TOL" : code,
                        positions)
                .replace(System.lineSeparator(), "\n");
    }
}
