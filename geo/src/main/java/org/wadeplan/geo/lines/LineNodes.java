package org.wadeplan.geo.lines;

import java.util.Arrays;

/**
 * Places that reaches keep clear of, such as confluences, each with where it lies on which lines.
 *
 * <p>Nodes are numbered from 0. A node may lie on no line at all: then only its straight distance to a reach counts.
 * Immutable; safe to share between threads.
 */
public final class LineNodes {

    private final double[] eastM;
    private final double[] northM;
    private final int[] firstTouch;
    private final int[] touchLine;
    private final double[] touchM;

    private LineNodes(Builder from) {
        this.eastM = Arrays.copyOf(from.eastM, from.nodes);
        this.northM = Arrays.copyOf(from.northM, from.nodes);
        this.firstTouch = Arrays.copyOf(from.firstTouch, from.nodes + 1);
        this.touchLine = Arrays.copyOf(from.touchLine, from.touches);
        this.touchM = Arrays.copyOf(from.touchM, from.touches);
    }

    /**
     * Where so many line ends or more meet at exactly equal coordinates: confluences with three. Both ends of a ring count.
     * In the order in which the lines first come there. A tributary that joins in the middle of a line is not seen here:
     * the network finds it and can hand its nodes over through a {@link Builder}.
     */
    public static LineNodes whereEndsMeet(LineSet lines, int leastEnds) {
        return new EndsMeeting(lines).nodes(leastEnds);
    }

    public int nodeCount() {
        return eastM.length;
    }

    public double eastM(int node) {
        return eastM[node];
    }

    public double northM(int node) {
        return northM[node];
    }

    /** How often lines touch a node; those that end there once, a ring twice. */
    public int touchCount(int node) {
        return firstTouch[node + 1] - firstTouch[node];
    }

    /** Number of a line that touches a node, from touch 0 to {@link #touchCount} less one. */
    public int touchLine(int node, int touch) {
        return touchLine[firstTouch[node] + touch];
    }

    /** Chainage on that line of where it touches the node, in metres. */
    public double touchM(int node, int touch) {
        return touchM[firstTouch[node] + touch];
    }

    /** Gathers nodes one by one; the touches of a node follow its place. Not safe to share between threads. */
    public static final class Builder {

        private double[] eastM = new double[256];
        private double[] northM = new double[256];
        private int[] firstTouch = new int[257];
        private int[] touchLine = new int[1024];
        private double[] touchM = new double[1024];
        private int nodes;
        private int touches;

        /** Begins a new node at a place. */
        public Builder node(double east, double north) {
            if (nodes == eastM.length) {
                eastM = Arrays.copyOf(eastM, 2 * nodes);
                northM = Arrays.copyOf(northM, 2 * nodes);
                firstTouch = Arrays.copyOf(firstTouch, 2 * nodes + 1);
            }
            eastM[nodes] = east;
            northM[nodes] = north;
            firstTouch[++nodes] = touches;
            return this;
        }

        /** Says that a line touches the node begun last, and at which of its chainages. */
        public Builder touch(int line, double chainageM) {
            if (touches == touchLine.length) {
                touchLine = Arrays.copyOf(touchLine, 2 * touches);
                touchM = Arrays.copyOf(touchM, 2 * touches);
            }
            touchLine[touches] = line;
            touchM[touches] = chainageM;
            firstTouch[nodes] = ++touches;
            return this;
        }

        public LineNodes build() {
            return new LineNodes(this);
        }
    }
}
