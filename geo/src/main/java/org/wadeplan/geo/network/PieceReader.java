package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads one feature of a stream layer: columns {@code code}, {@code name}, {@code catchment}, {@code flow}. */
final class PieceReader {

    static final String AS_DRAWN = "source-to-mouth";
    static final String AGAINST = "mouth-to-source";

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final String file;
    private final StreamHints hints;
    private final SuspectedFaults faults;

    PieceReader(String file, StreamHints hints, SuspectedFaults faults) {
        this.file = file;
        this.hints = hints;
        this.faults = faults;
    }

    Optional<DrawnPiece> read(Feature feature) {
        SourcePlace place = SourcePlace.part(file, "feature " + feature.id());
        Optional<String> known = feature.text("code");
        SourcePlace named = known.map(code -> place.row("feature " + feature.id() + " (" + code + ")"))
                .orElse(place);
        Optional<LineString> line = line(feature, named);
        if (line.isEmpty() && faults.answered(leaveOut(feature))) {
            return Optional.empty();
        }
        Optional<String> code = code(feature, place);
        if (code.isEmpty() || line.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> catchment = feature.text("catchment");
        if (catchment.isEmpty()) {
            error("stream-catchment-missing", named.column("catchment"), "the catchment is blank", "a catchment code");
        }
        DrawnPiece piece = new DrawnPiece(
                feature.id(), code.get(), name(feature, code.get(), named), catchment, false, line.get(), named);
        return Optional.of(withFlow(piece, feature.text("flow")));
    }

    private Optional<String> code(Feature feature, SourcePlace place) {
        Optional<String> code = feature.text("code");
        if (code.isEmpty()) {
            String name = feature.text("name")
                    .map(known -> " (its name is " + known + ")")
                    .orElse("");
            error("stream-code-missing", place.column("code"), "the code is blank" + name, "a short code such as BRN");
        }
        return code;
    }

    private Optional<String> name(Feature feature, String code, SourcePlace place) {
        Optional<String> name = feature.text("name");
        if (name.isPresent()) {
            return name;
        }
        Optional<String> known = Optional.ofNullable(hints.names().get(code));
        faults.add(Problem.warning(
                "stream-name-missing",
                place.column("name"),
                "the name is blank; "
                        + known.map(words -> "assumed to be " + words + ", by its code " + code)
                                .orElse("pages will show the code " + code),
                "what people call the stream",
                "nothing if that is right; if not, write the name into the file"));
        return known;
    }

    private Optional<LineString> line(Feature feature, SourcePlace place) {
        Optional<Geometry> shape = feature.geometry();
        if (shape.isEmpty() || shape.get().isEmpty()) {
            return unusable(feature, "stream-without-line", place, "there is no line, the shape is empty", "a line");
        }
        Geometry geometry = shape.get();
        if (geometry instanceof MultiLineString multi) {
            geometry = PartChain.chained(multi).map(Geometry.class::cast).orElse(multi);
        }
        if (!(geometry instanceof LineString drawn)) {
            String parts = geometry.getNumGeometries() > 1 ? " of " + geometry.getNumGeometries() + " parts" : "";
            return unusable(
                    feature,
                    "stream-not-one-line",
                    place,
                    "the shape is a " + geometry.getGeometryType() + parts,
                    "a LineString, or a MultiLineString whose parts follow each other end to end; other parts as several"
                            + " features of one code");
        }
        if (!(drawn.getLength() > 0)) {
            return unusable(
                    feature, "stream-without-length", place, "the line has no length", "a line longer than 0 m");
        }
        return Optional.of(flat(drawn, place));
    }

    private static String leaveOut(Feature feature) {
        return "leave-out:" + feature.id();
    }

    private Optional<LineString> unusable(
            Feature feature, String code, SourcePlace place, String found, String expected) {
        String id = leaveOut(feature);
        if (faults.answered(id)) {
            faults.add(
                    Problem.note("stream-left-out", place, found + "; left out, as accepted by " + id, "", "nothing"));
        } else {
            faults.add(Problem.error(
                    code,
                    place,
                    found,
                    expected,
                    "correct this feature in the map file, or go on without it by --accept " + id));
        }
        return Optional.empty();
    }

    /** In the plane and without repeated vertices, which change neither shape nor length. */
    private LineString flat(LineString drawn, SourcePlace place) {
        List<Coordinate> kept = new ArrayList<>();
        for (Coordinate vertex : drawn.getCoordinates()) {
            if (kept.isEmpty() || !kept.get(kept.size() - 1).equals2D(vertex)) {
                kept.add(new Coordinate(vertex.x, vertex.y));
            }
        }
        int repeated = drawn.getNumPoints() - kept.size();
        if (repeated > 0) {
            faults.add(Problem.note(
                    "stream-repeated-vertices",
                    place,
                    repeated + (repeated == 1 ? " vertex stands" : " vertices stand") + " twice in the same place;"
                            + " the copies were passed over, which changes neither shape nor length",
                    "",
                    "nothing"));
        }
        return SHAPES.createLineString(kept.toArray(new Coordinate[0]));
    }

    private DrawnPiece withFlow(DrawnPiece piece, Optional<String> flow) {
        String stated = flow.map(words -> words.toLowerCase(Locale.ROOT)).orElse("");
        if (!stated.isEmpty() && !stated.equals(AS_DRAWN) && !stated.equals(AGAINST)) {
            error(
                    "stream-flow-unknown-word",
                    piece.place().column("flow"),
                    "\"" + flow.orElse("") + "\" is not a direction",
                    AS_DRAWN + " or " + AGAINST + ", or blank");
            return piece;
        }
        DrawnPiece facing = stated.equals(AGAINST) ? piece.turned() : piece;
        return new DrawnPiece(
                facing.feature(),
                facing.code(),
                facing.name(),
                facing.catchment(),
                !stated.isEmpty(),
                facing.line(),
                facing.place());
    }

    private Optional<LineString> error(String code, SourcePlace place, String found, String expected) {
        faults.add(Problem.error(code, place, found, expected, "correct this feature in the map file"));
        return Optional.empty();
    }
}
