package org.wadeplan.planner.method.space;

import java.util.Arrays;

/**
 * Where to halve a box.
 *
 * @param column the column that is cut
 * @param last the last slice of the lower part
 */
record Cut(int column, int last) {

    /** What one box that has to be looked at on both sides costs, against one more on the larger side. */
    private static final int TWICE_PENALTY = 3;

    int[] lower(Box box) {
        return Runs.intersect(box.runs(column), Runs.of(0, last));
    }

    int[] upper(Box box) {
        return Runs.intersect(box.runs(column), Runs.of(last + 1, Integer.MAX_VALUE));
    }

    /**
     * The cut that parts the other boxes best: few on both sides, and both sides alike.
     *
     * @param meeting numbers of the other boxes; each meets the box, none covers it
     */
    static Cut best(Box box, Box[] others, int[] meeting) {
        Search search = new Search(meeting.length);
        for (int column = 0; column < box.width(); column++) {
            search.look(box, others, meeting, column);
        }
        return new Cut(search.column, search.last);
    }

    /** The best cut so far. */
    private static final class Search {

        private final int[] firsts;
        private final int[] lasts;
        private int[] cuts = new int[64];
        private int column;
        private int last;
        private long least = Long.MAX_VALUE;

        Search(int size) {
            this.firsts = new int[size];
            this.lasts = new int[size];
        }

        void look(Box box, Box[] others, int[] meeting, int at) {
            int[] mine = box.runs(at);
            int from = mine[0];
            int until = mine[mine.length - 1];
            int found = 0;
            for (int i = 0; i < meeting.length; i++) {
                int[] runs = others[meeting[i]].runs(at);
                found = addLimits(runs, from, until, found);
                bounds(runs, from, until, i);
            }
            if (found > 0) {
                Arrays.sort(firsts);
                Arrays.sort(lasts);
                Arrays.sort(cuts, 0, found);
                judge(at, found);
            }
        }

        /** Every slice after which one of the other boxes starts or ends inside this one. */
        private int addLimits(int[] runs, int from, int until, int found) {
            int size = found;
            for (int i = 0; i < runs.length && runs[i] <= until; i += 2) {
                if (size + 2 > cuts.length) {
                    cuts = Arrays.copyOf(cuts, cuts.length * 2);
                }
                if (runs[i] > from) {
                    cuts[size++] = runs[i] - 1;
                }
                if (runs[i + 1] >= from && runs[i + 1] < until) {
                    cuts[size++] = runs[i + 1];
                }
            }
            return size;
        }

        private void bounds(int[] runs, int from, int until, int i) {
            int low = 0;
            while (runs[low + 1] < from) {
                low += 2;
            }
            int high = runs.length - 2;
            while (runs[high] > until) {
                high -= 2;
            }
            firsts[i] = runs[low];
            lasts[i] = runs[high + 1];
        }

        private void judge(int at, int found) {
            int below = 0;
            int ended = 0;
            for (int i = 0; i < found; i++) {
                int cut = cuts[i];
                while (below < firsts.length && firsts[below] <= cut) {
                    below++;
                }
                while (ended < lasts.length && lasts[ended] <= cut) {
                    ended++;
                }
                int above = lasts.length - ended;
                long twice = (long) below + above - firsts.length;
                long cost = Math.max(below, above) + TWICE_PENALTY * twice;
                if (cost < least) {
                    least = cost;
                    column = at;
                    last = cut;
                }
            }
        }
    }
}
