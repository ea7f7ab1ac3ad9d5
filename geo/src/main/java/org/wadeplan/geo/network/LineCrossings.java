package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/**
 * Finds where two lines cross without a vertex in common: a canal over a stream, or a junction that was never drawn.
 *
 * <p>Segments are sorted into square cells; only those of one cell are held against each other.
 */
public final class LineCrossings {

    private static final double LEAST_CELL_M = 1;
    private static final double MOST_CELL_M = 1000;

    /** A segment across more cells than this is a slip of digits, no stream, and is passed over. */
    private static final double MOST_CELLS = 100_000;

    private final LineSet lines;
    private final CellWalk cells;
    private final int[] start;
    private final int[] segmentEnd;
    private final int[] segmentLine;
    private final Set<Long> seen = new HashSet<>();
    private final List<Crossing> found = new ArrayList<>();

    /**
     * Two lines that cross.
     *
     * @param one the line with the smaller number
     * @param other the line with the larger number
     */
    public record Crossing(LinePlace one, LinePlace other, MetricPoint at) {}

    private LineCrossings(LineSet lines) {
        this.lines = lines;
        this.cells = new CellWalk(cellM(lines), 0, lines.vertexCount());
        this.start = new int[cells.numbers() + 1];
        eachSegment((line, end) -> cells.walk(lines, end, cell -> start[cell + 1]++));
        for (int cell = 0; cell < cells.numbers(); cell++) {
            start[cell + 1] += start[cell];
        }
        int[] next = Arrays.copyOf(start, start.length);
        this.segmentEnd = new int[start[cells.numbers()]];
        this.segmentLine = new int[segmentEnd.length];
        eachSegment((line, end) -> cells.walk(lines, end, cell -> {
            segmentEnd[next[cell]] = end;
            segmentLine[next[cell]++] = line;
        }));
    }

    /** Every crossing between two different lines, by line numbers, then along the first. */
    public static List<Crossing> of(LineSet lines) {
        LineCrossings crossings = new LineCrossings(lines);
        for (int cell = 0; cell < crossings.cells.numbers(); cell++) {
            crossings.compare(crossings.start[cell], crossings.start[cell + 1]);
        }
        crossings.found.sort(Comparator.comparingInt((Crossing each) -> each.one.line())
                .thenComparingDouble(each -> each.one.chainageM())
                .thenComparingInt(each -> each.other.line()));
        return List.copyOf(crossings.found);
    }

    /** Twice the mean length of a segment: most segments then pass one or two cells. */
    private static double cellM(LineSet lines) {
        double sumM = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            sumM += lines.lengthM(line);
        }
        double meanM = sumM / Math.max(1, lines.vertexCount() - lines.lineCount());
        return Math.min(MOST_CELL_M, Math.max(LEAST_CELL_M, 2 * meanM));
    }

    private interface SegmentVisitor {
        void segment(int line, int endVertex);
    }

    private void eachSegment(SegmentVisitor visitor) {
        for (int line = 0; line < lines.lineCount(); line++) {
            for (int end = lines.firstVertex(line) + 1; end < lines.endVertex(line); end++) {
                if (cells.span(lines, end) <= MOST_CELLS) {
                    visitor.segment(line, end);
                }
            }
        }
    }

    /** The segments of a cell stand by line, so that those of one line are passed over together. */
    private void compare(int from, int to) {
        int others = from;
        for (int i = from; i < to; i++) {
            while (others < to && segmentLine[others] <= segmentLine[i]) {
                others++;
            }
            for (int j = others; j < to; j++) {
                compareTwo(i, j);
            }
        }
    }

    private void compareTwo(int i, int j) {
        int a = segmentEnd[i];
        int b = segmentEnd[j];
        double towardsB = side(a, b - 1);
        double beyondB = side(a, b);
        double towardsA = side(b, a - 1);
        double beyondA = side(b, a);
        boolean crosses = towardsB * beyondB < 0 && towardsA * beyondA < 0;
        if (crosses && seen.add(((long) a << 32) | b)) {
            double shareA = towardsA / (towardsA - beyondA);
            double shareB = towardsB / (towardsB - beyondB);
            LinePlace one = place(segmentLine[i], a, shareA);
            found.add(new Crossing(one, place(segmentLine[j], b, shareB), lines.at(one.line(), one.chainageM())));
        }
    }

    private LinePlace place(int line, int end, double share) {
        double fromM = lines.chainageM(end - 1);
        return new LinePlace(line, fromM + share * (lines.chainageM(end) - fromM));
    }

    /** On which side of a segment a vertex lies: above 0 left, below 0 right. */
    private double side(int end, int vertex) {
        double east = lines.eastM(end - 1);
        double north = lines.northM(end - 1);
        return (lines.eastM(end) - east) * (lines.northM(vertex) - north)
                - (lines.northM(end) - north) * (lines.eastM(vertex) - east);
    }
}
