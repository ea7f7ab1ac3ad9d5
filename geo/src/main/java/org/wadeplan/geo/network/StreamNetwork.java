package org.wadeplan.geo.network;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * The stream lines of a round, each running from source to mouth, in the round's metric system.
 *
 * <p>Chainage grows downstream from the source. Immutable.
 */
public final class StreamNetwork {

    private final TreeMap<String, StreamLine> lines = new TreeMap<>();
    private final Map<String, LineMeasure> measures = new TreeMap<>();

    /**
     * Gathers the lines.
     *
     * @throws IllegalArgumentException where two lines have one code
     */
    public StreamNetwork(Collection<StreamLine> streams) {
        for (StreamLine stream : streams) {
            if (lines.put(stream.code(), stream) != null) {
                throw new IllegalArgumentException("Two stream lines are called " + stream.code());
            }
            measures.put(stream.code(), new LineMeasure(stream.line()));
        }
    }

    /** Sorted by code. */
    public List<StreamLine> lines() {
        return List.copyOf(lines.values());
    }

    public Optional<StreamLine> line(String code) {
        return Optional.ofNullable(lines.get(code));
    }

    /**
     * The measure along one line.
     *
     * @throws IllegalArgumentException where no line has that code; ask {@link #line} first
     */
    public LineMeasure measure(String code) {
        LineMeasure measure = measures.get(code);
        if (measure == null) {
            throw new IllegalArgumentException("No stream line is called " + code + "; there are " + lines.keySet());
        }
        return measure;
    }

    /** Metres from the source along the line to the point of it that is nearest to a place. */
    public double chainageM(String code, MetricPoint place) {
        return measure(code).foot(place).chainageM();
    }

    /** Metres along the line to the mouth from the point of it that is nearest to a place. */
    public double fromMouthM(String code, MetricPoint place) {
        return measure(code).lengthM() - chainageM(code, place);
    }

    /**
     * The point at a chainage.
     *
     * @throws IllegalArgumentException where the chainage lies outside the line
     */
    public MetricPoint at(String code, double chainageM) {
        return measure(code).at(chainageM);
    }

    /** The stretch between two chainages, running from the first to the second. */
    public LineString between(String code, double fromM, double toM) {
        return measure(code).between(fromM, toM);
    }

    /**
     * A stream line near a place.
     *
     * @param stream the line
     * @param foot where on it the place falls, and how far off it lies
     */
    public record Candidate(StreamLine stream, LineMeasure.Foot foot) {}

    /** Every line with its distance from a place, nearest first; at the same distance by code. */
    public List<Candidate> byDistance(MetricPoint place) {
        return lines.values().stream()
                .map(line -> new Candidate(line, measure(line.code()).foot(place)))
                .sorted(Comparator.comparingDouble(
                                (Candidate candidate) -> candidate.foot().distanceM())
                        .thenComparing(candidate -> candidate.stream().code()))
                .toList();
    }

    /** The nearest line; at the same distance the one whose code comes first; empty where there are no lines. */
    public Optional<Candidate> nearest(MetricPoint place) {
        return byDistance(place).stream().findFirst();
    }

    /** Where lines meet, within {@link Junctions#TOLERANCE_M}. */
    public List<Junction> junctions() {
        return Junctions.of(this);
    }

    /** The Strahler order of every piece between junctions. */
    public List<OrderedPiece> orders() {
        return OrderedPieces.of(this);
    }
}
