package org.wadeplan.geo.network;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.PackedSegmentIndex;

/**
 * The stream lines of a round, each running from source to mouth, in the round's metric system.
 *
 * <p>Chainage grows downstream from the source. Immutable.
 */
public final class StreamNetwork {

    private final TreeMap<String, StreamLine> lines = new TreeMap<>();
    private final Map<String, LineMeasure> measures = new TreeMap<>();
    private final List<StreamLine> numbered;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final NodedOnce noded;

    /**
     * Gathers the lines, to be joined within {@link StreamNoding#SNAP_TOLERANCE_M}.
     *
     * @throws IllegalArgumentException where two lines have one code
     */
    public StreamNetwork(Collection<StreamLine> streams) {
        this(streams, StreamNoding.SNAP_TOLERANCE_M);
    }

    /**
     * Gathers the lines.
     *
     * @param snapToleranceM how near a loose end meets another line, metres
     * @throws IllegalArgumentException where two lines have one code
     */
    public StreamNetwork(Collection<StreamLine> streams, double snapToleranceM) {
        for (StreamLine stream : streams) {
            if (lines.put(stream.code(), stream) != null) {
                throw new IllegalArgumentException("Two stream lines are called " + stream.code());
            }
            measures.put(stream.code(), new LineMeasure(stream.line()));
        }
        this.numbered = List.copyOf(lines.values());
        numbered.forEach(stream -> numbers.put(stream.code(), numbers.size()));
        this.noded = new NodedOnce(numbered, snapToleranceM);
    }

    /** Sorted by code; a line's position in this list is its number in {@link #graph()}. */
    public List<StreamLine> lines() {
        return numbered;
    }

    /** The number of a line in {@link #graph()} and in its set of lines. */
    public OptionalInt number(String code) {
        Integer number = numbers.get(code);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /**
     * The lines with the places where they meet. Line numbers are positions in {@link #lines()}, line ids are stream
     * codes, chainages are those of {@link #measure}. Made on first use, then kept.
     */
    public StreamGraph graph() {
        return noded.graph();
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

    /** Finds lines near a place, by the same numbers as {@link #graph()}. Made on first use, then kept. */
    public PackedSegmentIndex index() {
        return noded.index();
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
        return byDistance(place, numbered.size(), Double.POSITIVE_INFINITY);
    }

    /**
     * The lines near a place, nearest first; at the same distance by code.
     *
     * @param most how many at most
     * @param withinM none further off than this, metres; may be infinite
     */
    public List<Candidate> byDistance(MetricPoint place, int most, double withinM) {
        return noded.index().nearest(place, most, withinM).stream()
                .map(snap -> numbered.get(snap.line()))
                .map(stream -> new Candidate(stream, measure(stream.code()).foot(place)))
                .toList();
    }

    /** The nearest line; at the same distance the one whose code comes first; empty where there are no lines. */
    public Optional<Candidate> nearest(MetricPoint place) {
        return byDistance(place, 1, Double.POSITIVE_INFINITY).stream().findFirst();
    }

    /** Where two lines or more meet, within the snap tolerance; lines that merely cross do not. */
    public List<Junction> junctions() {
        return Junctions.of(graph());
    }

    /** The Strahler order of every piece between junctions. */
    public List<OrderedPiece> orders() {
        return OrderedPieces.of(graph());
    }
}
