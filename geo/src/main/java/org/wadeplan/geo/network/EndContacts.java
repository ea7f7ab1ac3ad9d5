package org.wadeplan.geo.network;

import java.util.Arrays;
import java.util.function.IntPredicate;
import org.wadeplan.geo.lines.LineSet;

/**
 * Where other lines pass near the ends of lines: for each end and each other line, the nearest point of that line.
 *
 * <p>Ends are numbered two a line, first vertex before last. One pass over all segments past a grid of the ends; work
 * and memory grow with the segments and with what is found.
 */
final class EndContacts {

    private static final int NONE = -1;

    private final LineSet lines;
    private final double withinM;
    private final int[] latest;
    private int[] previous = new int[256];
    private int[] line = new int[256];
    private double[] chainageM = new double[256];
    private double[] distanceM = new double[256];
    private int count;

    private EndContacts(LineSet lines, double withinM) {
        this.lines = lines;
        this.withinM = withinM;
        this.latest = new int[2 * lines.lineCount()];
        Arrays.fill(latest, NONE);
    }

    /**
     * Everything near the ends that are asked for.
     *
     * @param withinM no line further off than this, in metres, 0 or more
     */
    static EndContacts of(LineSet lines, double withinM, IntPredicate wanted) {
        EndContacts contacts = new EndContacts(lines, withinM);
        int[] ends = java.util.stream.IntStream.range(0, 2 * lines.lineCount())
                .filter(wanted)
                .toArray();
        double[] eastM = new double[ends.length];
        double[] northM = new double[ends.length];
        for (int i = 0; i < ends.length; i++) {
            eastM[i] = lines.eastM(vertex(lines, ends[i]));
            northM[i] = lines.northM(vertex(lines, ends[i]));
        }
        contacts.sweep(eastM, northM, ends);
        return contacts;
    }

    /** Number of the vertex that an end is. */
    static int vertex(LineSet lines, int end) {
        return (end & 1) == 0 ? lines.firstVertex(end >> 1) : lines.endVertex(end >> 1) - 1;
    }

    /** Number of the first contact of an end, or a number below 0; contacts come in falling order of their lines. */
    int first(int end) {
        return latest[end];
    }

    /** Number of the next contact of the same end, or a number below 0. */
    int next(int contact) {
        return previous[contact];
    }

    int line(int contact) {
        return line[contact];
    }

    double chainageM(int contact) {
        return chainageM[contact];
    }

    double distanceM(int contact) {
        return distanceM[contact];
    }

    private void sweep(double[] eastM, double[] northM, int[] ends) {
        if (ends.length == 0) {
            return;
        }
        int[] segment = new int[2];
        PointGrid grid = new PointGrid(eastM, northM, withinM, point -> measure(ends[point], segment[0], segment[1]));
        for (int each = 0; each < lines.lineCount(); each++) {
            segment[0] = each;
            for (int vertex = lines.firstVertex(each) + 1; vertex < lines.endVertex(each); vertex++) {
                segment[1] = vertex;
                grid.near(lines, vertex);
            }
        }
    }

    private void measure(int end, int other, int segmentEnd) {
        if (end >> 1 == other) {
            return;
        }
        int vertex = vertex(lines, end);
        double fromEast = lines.eastM(segmentEnd - 1);
        double fromNorth = lines.northM(segmentEnd - 1);
        double dx = lines.eastM(segmentEnd) - fromEast;
        double dy = lines.northM(segmentEnd) - fromNorth;
        double px = lines.eastM(vertex) - fromEast;
        double py = lines.northM(vertex) - fromNorth;
        double share = Math.min(1, Math.max(0, (px * dx + py * dy) / (dx * dx + dy * dy)));
        double offM = Math.hypot(px - share * dx, py - share * dy);
        if (offM <= withinM) {
            double startM = lines.chainageM(segmentEnd - 1);
            keep(end, other, startM + share * (lines.chainageM(segmentEnd) - startM), offM);
        }
    }

    private void keep(int end, int other, double atM, double offM) {
        int known = latest[end];
        if (known != NONE && line[known] == other) {
            if (offM < distanceM[known]) {
                chainageM[known] = atM;
                distanceM[known] = offM;
            }
            return;
        }
        if (count == line.length) {
            int larger = count + count / 2;
            previous = Arrays.copyOf(previous, larger);
            line = Arrays.copyOf(line, larger);
            chainageM = Arrays.copyOf(chainageM, larger);
            distanceM = Arrays.copyOf(distanceM, larger);
        }
        previous[count] = known;
        line[count] = other;
        chainageM[count] = atM;
        distanceM[count] = offM;
        latest[end] = count++;
    }
}
