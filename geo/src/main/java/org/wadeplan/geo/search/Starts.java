package org.wadeplan.geo.search;

import java.util.Arrays;
import org.wadeplan.geo.network.LinePlace;

/**
 * Places for a start, best first: by score, then by line, then by chainage. Kept in plain arrays, since a nation has
 * millions.
 */
final class Starts {

    private final Runs runs;
    private int[] run = new int[1024];
    private double[] startM = new double[1024];
    private double[] score = new double[1024];
    private boolean[] exact = new boolean[1024];
    private int count;
    private int[] heap = new int[0];
    private int waiting;

    Starts(Runs runs) {
        this.runs = runs;
    }

    void add(int ofRun, double atM, double atMost) {
        if (count == run.length) {
            int larger = 2 * count;
            run = Arrays.copyOf(run, larger);
            startM = Arrays.copyOf(startM, larger);
            score = Arrays.copyOf(score, larger);
            exact = Arrays.copyOf(exact, larger);
        }
        run[count] = ofRun;
        startM[count] = atM;
        score[count++] = atMost;
    }

    int count() {
        return count;
    }

    /** To be called once, after the last start was added. */
    void order() {
        heap = new int[count];
        for (int start = 0; start < count; start++) {
            heap[start] = start;
        }
        waiting = count;
        for (int at = count / 2 - 1; at >= 0; at--) {
            sink(at);
        }
    }

    boolean isEmpty() {
        return waiting == 0;
    }

    /** Number of the best start. */
    int best() {
        return heap[0];
    }

    void dropBest() {
        heap[0] = heap[--waiting];
        sink(0);
    }

    /** The best start gets its true score, which is no higher than what it had, and finds its place. */
    void rescoreBest(double trueScore) {
        score[heap[0]] = trueScore;
        exact[heap[0]] = true;
        sink(0);
    }

    int run(int start) {
        return run[start];
    }

    double startM(int start) {
        return startM[start];
    }

    boolean isExact(int start) {
        return exact[start];
    }

    private void sink(int from) {
        int at = from;
        while (2 * at + 1 < waiting) {
            int child = 2 * at + 1;
            if (child + 1 < waiting && comesFirst(heap[child + 1], heap[child])) {
                child++;
            }
            if (!comesFirst(heap[child], heap[at])) {
                return;
            }
            int swap = heap[at];
            heap[at] = heap[child];
            heap[child] = swap;
            at = child;
        }
    }

    private boolean comesFirst(int a, int b) {
        if (score[a] != score[b]) {
            return score[a] > score[b];
        }
        LinePlace placeA = runs.place(run[a], startM[a]);
        LinePlace placeB = runs.place(run[b], startM[b]);
        int byLine = runs.rank(placeA.line()) - runs.rank(placeB.line());
        return byLine != 0 ? byLine < 0 : placeA.chainageM() < placeB.chainageM();
    }
}
