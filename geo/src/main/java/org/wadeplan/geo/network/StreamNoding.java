package org.wadeplan.geo.network;

import org.wadeplan.geo.lines.LineSet;

/**
 * Finds where lines meet and makes a graph of them; no line is moved, cut or turned.
 *
 * <p>Lines meet at a place where both have a vertex, to the last digit; and where an end that so meets nothing lies within
 * the snap tolerance of another line: of its end, of a vertex, or of the middle of a segment. Such a loose end is joined to
 * the nearest line, there to a node within the tolerance, else to the nearest point. Ends that already meet
 * something stay as they are, so that a large tolerance cannot pull a sound network together. Lines that merely cross
 * without a vertex in common are not joined: that may be a canal over a stream.
 *
 * <p>The answer does not depend on the order of the lines, apart from the numbers of nodes, nor on lines elsewhere.
 */
public final class StreamNoding {

    /**
     * Loose ends this near to another line, in metres, meet it unless a round says otherwise. Mapped data meets exactly or
     * misses by more; common practice.
     */
    public static final double SNAP_TOLERANCE_M = 0.5;

    private StreamNoding() {}

    /**
     * The graph of lines that all run downstream, or as if they did.
     *
     * @param snapToleranceM 0 or more, in metres; 0 joins only what meets exactly
     * @throws IllegalArgumentException where the tolerance is negative or no number
     */
    public static StreamGraph graph(LineSet lines, double snapToleranceM) {
        if (!(snapToleranceM >= 0) || Double.isInfinite(snapToleranceM)) {
            throw new IllegalArgumentException("A snap tolerance is 0 m or more, not " + snapToleranceM);
        }
        SharedVertices shared = SharedVertices.of(lines);
        LineStops stops = new LineStops(lines, shared);
        EndContacts contacts = EndContacts.of(lines, snapToleranceM, end -> shared.isLoose(shared.placeOfEnd(end)));
        new LooseEnds(lines, shared, stops, snapToleranceM).join(contacts);
        return new GraphPieces(lines, shared, stops, snapToleranceM).build();
    }
}
