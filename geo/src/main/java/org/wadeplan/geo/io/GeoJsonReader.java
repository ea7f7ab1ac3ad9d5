package org.wadeplan.geo.io;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.Reprojection;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.LayerShape.Kind;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads a GeoJSON FeatureCollection into the round's system, feature by feature.
 *
 * <p>RFC 7946 knows longitude and latitude on WGS 84 only. Files in the older form of 2008 may state another system in a
 * {@code crs} member; they are read with a note. The file is gone through twice: first for its columns and its system,
 * then for its features. Not to be shared between threads.
 */
public final class GeoJsonReader {

    private static final String NOT_DEGREES = "coordinates-not-degrees";

    private final Path file;
    private final SourcePlace place;
    private final CoordinateSystem round;
    private final Optional<StatedSystem> settings;

    /**
     * @param file the GeoJSON file
     * @param place how problems name it
     * @param round the system to turn longitudes and latitudes into; also the guess where a file holds metres
     */
    public GeoJsonReader(Path file, SourcePlace place, CoordinateSystem round) {
        this(file, place, round, Optional.empty());
    }

    /** @param settings the system that a person says the file is in, whatever it says itself */
    GeoJsonReader(Path file, SourcePlace place, CoordinateSystem round, Optional<StatedSystem> settings) {
        this.file = file;
        this.place = place;
        this.round = round;
        this.settings = settings;
    }

    /** Every feature, in the round's metric system and the file's order. */
    public Checked<FeatureLayer> read() {
        List<Feature> features = new ArrayList<>();
        FeatureSink all = new FeatureSink() {
            @Override
            public boolean begins(LayerShape shape) {
                return true;
            }

            @Override
            public void take(Feature feature) {
                features.add(feature);
            }
        };
        return each(all).map(shape -> new FeatureLayer(shape, features));
    }

    /** Hands over the features, already in the round's system. */
    Checked<LayerShape> each(FeatureSink sink) {
        Optional<Problem> unreadable = FileCheck.readable(file, place, "a GeoJSON file");
        if (unreadable.isPresent()) {
            return Checked.failed(unreadable.get());
        }
        try {
            GeoJsonText text = new GeoJsonText(file);
            Optional<GeoJsonText.Outline> outline = text.outline();
            return outline.isEmpty() ? Checked.failed(notGeoJson()) : features(text, outline.get(), sink);
        } catch (JsonProcessingException broken) {
            return Checked.failed(Problem.error(
                    "not-json",
                    lineOf(broken),
                    "the file is not JSON from here on",
                    "a GeoJSON file, whole",
                    "export the layer again as GeoJSON, or copy the file again if it breaks off here"));
        } catch (IOException refused) {
            return Checked.failed(Problem.error(
                    "file-unreadable", place, "the file cannot be read", "a GeoJSON file", "check the disk it is on"));
        }
    }

    /** Where the file's shapes lie; empty where it cannot be read. */
    static Optional<Extent> extent(Path file) {
        Envelope box = new Envelope();
        try {
            GeoJsonText text = new GeoJsonText(file);
            Optional<GeoJsonText.Outline> outline = text.outline();
            text.each((id, attributes, geometry) -> expand(box, geometry.path("coordinates")));
            return outline.map(whole -> new Extent(
                    box,
                    Optional.of(StatedSystem.code(
                            whole.statedSystem().isEmpty()
                                            || whole.statedSystem().endsWith("CRS84")
                                    ? "EPSG:4326"
                                    : "EPSG:" + whole.statedSystem().replaceAll("^.*:", "")))));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static void expand(Envelope box, JsonNode coordinates) {
        if (coordinates.path(0).isNumber() && coordinates.path(1).isNumber()) {
            box.expandToInclude(
                    coordinates.path(0).doubleValue(), coordinates.path(1).doubleValue());
        } else {
            coordinates.forEach(inner -> expand(box, inner));
        }
    }

    private Problem notGeoJson() {
        return Problem.error(
                "not-geojson",
                place,
                "the file is JSON, but not a GeoJSON FeatureCollection",
                "a FeatureCollection as RFC 7946 describes it",
                "export the whole layer as GeoJSON");
    }

    private SourcePlace lineOf(JsonProcessingException broken) {
        return broken.getLocation() == null || broken.getLocation().getLineNr() < 1
                ? place
                : SourcePlace.line(place.file(), broken.getLocation().getLineNr());
    }

    private Checked<LayerShape> features(GeoJsonText text, GeoJsonText.Outline outline, FeatureSink sink)
            throws IOException {
        Checked<Optional<Reprojection>> way = way(outline.statedSystem());
        if (way.value().isEmpty()) {
            return Checked.failed(way.problems());
        }
        LayerShape shape =
                new LayerShape(name(), Optional.of(StatedSystem.code(round.code())), Kind.GEOMETRY, outline.fields());
        Findings findings = new Findings(place);
        findings.addAll(way.problems());
        List<Problem> notDegrees = new ArrayList<>();
        int[] more = {0};
        if (sink.begins(shape)) {
            text.each((id, attributes, geometry) -> {
                GeoJsonShape reading = new GeoJsonShape(
                        round, place.row("feature " + id), way.value().get());
                sink.take(new Feature(id, reading.read(geometry), attributes));
                for (Problem problem : reading.problems()) {
                    if (!problem.code().equals(NOT_DEGREES)) {
                        findings.add(problem);
                    } else if (notDegrees.isEmpty()) {
                        notDegrees.add(problem);
                    } else {
                        more[0]++;
                    }
                }
            });
        }
        notDegrees.forEach(first -> findings.add(onlyOnce(first, more[0])));
        return Checked.of(shape, findings.all());
    }

    /** A whole file in metres is one mistake, not one for each of its features. */
    private static Problem onlyOnce(Problem first, int more) {
        return more == 0
                ? first
                : Problem.error(
                        first.code(),
                        first.place(),
                        first.found() + "; so are those of " + more + " more features",
                        first.expected(),
                        first.remedy());
    }

    private String name() {
        return place.file().replaceAll("^.*[/\\\\]", "").replaceAll("\\.[^.]*$", "");
    }

    /** Older programs wrote a crs member; RFC 7946 took it out, and gave everything else longitude and latitude. */
    private Checked<Optional<Reprojection>> way(String stated) {
        if (settings.isPresent()) {
            Optional<StatedSystem> inFile =
                    stated.isEmpty() ? Optional.empty() : Optional.of(StatedSystem.code(stated));
            return round.from(settings.get(), place)
                    .map(Optional::of)
                    .with(SystemNotes.note(place, inFile, settings.get(), round));
        }
        if (stated.isEmpty() || stated.endsWith("CRS84") || stated.endsWith(":4326")) {
            return Checked.of(Optional.empty());
        }
        String code = "EPSG:" + stated.replaceAll("^.*:", "");
        Checked<Reprojection> way = round.from(code, place);
        if (way.value().isEmpty() || !stated.toUpperCase(Locale.ROOT).contains("EPSG")) {
            return Checked.failed(Problem.error(
                    "geojson-crs",
                    place,
                    "the file says its coordinate system is " + stated,
                    "longitude and latitude on WGS 84, as RFC 7946 has it, or an EPSG code",
                    "export it again in WGS 84, or as a GeoPackage, which may be in any system"));
        }
        Problem older = Problem.note(
                "geojson-crs-member",
                place,
                "the file is GeoJSON in the form of 2008, which states its coordinate system, " + code
                        + "; it was read as that",
                "",
                "nothing; RFC 7946 has longitude and latitude on WGS 84 only");
        return way.map(Optional::of).with(List.of(older));
    }
}
