package org.wadeplan.geo.lines;

import java.util.List;
import java.util.stream.IntStream;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * A {@link SegmentIndex} over any number of lines of any shape: short runs of neighbouring segments in a packed tree.
 *
 * <p>A run holds at most eight segments of one line, so one very long line is as quick to search as many short ones, and
 * lines spread thinly over a country cost no empty cells. Answers are exact. Immutable; safe to share between threads.
 */
public final class PackedSegmentIndex implements SegmentIndex {

    private static final int RUN_SEGMENTS = 8;

    private final LineSet lines;
    private final PackedBoxes boxes;
    private final int[] runLine;
    private final int[] runStart;

    /** Told of one segment: the number of its line, and of the vertex that ends it. */
    @FunctionalInterface
    public interface SegmentVisitor {
        void segment(int line, int endVertex);
    }

    public PackedSegmentIndex(LineSet lines) {
        this.lines = lines;
        int runs = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            runs += runs(line);
        }
        this.runLine = new int[runs];
        this.runStart = new int[runs];
        this.boxes = new PackedBoxes(boxed());
    }

    public LineSet lines() {
        return lines;
    }

    @Override
    public List<Snap> nearest(MetricPoint place, int most, double withinM) {
        if (most < 0 || !(withinM >= 0)) {
            throw new IllegalArgumentException("Cannot look for " + most + " lines within " + withinM + " m");
        }
        NearestLines nearest = new NearestLines(lines, place, most, withinM);
        if (most > 0 && boxes.root() >= 0) {
            search(place, nearest);
        }
        return nearest.snaps();
    }

    /** As {@link #nearest} for each place in turn, on all cores; in the order of the places. */
    public List<List<Snap>> nearestOfEach(List<MetricPoint> places, int most, double withinM) {
        return IntStream.range(0, places.size())
                .parallel()
                .mapToObj(i -> nearest(places.get(i), most, withinM))
                .toList();
    }

    /** Every segment whose own box meets a rectangle; each once, in an order that depends on the lines alone. */
    public void eachIn(double westM, double southM, double eastM, double northM, SegmentVisitor visitor) {
        int[] open = new int[PackedBoxes.MOST_OPEN];
        int count = 0;
        if (boxes.root() >= 0) {
            open[count++] = boxes.root();
        }
        while (count > 0) {
            int box = open[--count];
            if (!boxes.meets(box, westM, southM, eastM, northM)) {
                continue;
            }
            if (boxes.isItem(box)) {
                eachOfRun(boxes.item(box), westM, southM, eastM, northM, visitor);
                continue;
            }
            int start = boxes.childrenStart(box);
            for (int child = boxes.childrenEnd(box) - 1; child >= start; child--) {
                open[count++] = child;
            }
        }
    }

    private void eachOfRun(int run, double westM, double southM, double eastM, double northM, SegmentVisitor visitor) {
        int line = runLine[run];
        int last = lastVertex(run);
        for (int end = runStart[run] + 1; end <= last; end++) {
            double east0 = lines.eastM(end - 1);
            double east1 = lines.eastM(end);
            double north0 = lines.northM(end - 1);
            double north1 = lines.northM(end);
            if (Math.min(east0, east1) <= eastM
                    && Math.max(east0, east1) >= westM
                    && Math.min(north0, north1) <= northM
                    && Math.max(north0, north1) >= southM) {
                visitor.segment(line, end);
            }
        }
    }

    /** Nearest box first, until the nearest left is further off than what was found. */
    private void search(MetricPoint place, NearestLines nearest) {
        BoxQueue queue = new BoxQueue();
        queue.add(0, boxes.root());
        while (!queue.isEmpty() && queue.leastM2() <= nearest.boundM2()) {
            int box = queue.take();
            if (boxes.isItem(box)) {
                int run = boxes.item(box);
                nearest.addRun(runLine[run], runStart[run], lastVertex(run));
                continue;
            }
            int end = boxes.childrenEnd(box);
            for (int child = boxes.childrenStart(box); child < end; child++) {
                double distanceM2 = boxes.distanceM2(child, place.eastM(), place.northM());
                if (distanceM2 <= nearest.boundM2()) {
                    queue.add(distanceM2, child);
                }
            }
        }
    }

    private int lastVertex(int run) {
        int next = run + 1;
        return next < runLine.length && runLine[next] == runLine[run]
                ? runStart[next]
                : lines.endVertex(runLine[run]) - 1;
    }

    private int runs(int line) {
        int segments = lines.endVertex(line) - lines.firstVertex(line) - 1;
        return (segments + RUN_SEGMENTS - 1) / RUN_SEGMENTS;
    }

    /** Numbers the runs, those of a line about equally long, and gives the box of each. */
    private float[] boxed() {
        float[] sides = new float[4 * runLine.length];
        int run = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            int first = lines.firstVertex(line);
            long segments = lines.endVertex(line) - first - 1L;
            int runs = runs(line);
            for (int part = 0; part < runs; part++) {
                runLine[run] = line;
                runStart[run] = (int) (first + segments * part / runs);
                box(sides, 4 * run, runStart[run], (int) (first + segments * (part + 1) / runs));
                run++;
            }
        }
        return sides;
    }

    private void box(float[] sides, int at, int from, int to) {
        double west = lines.eastM(from);
        double east = west;
        double south = lines.northM(from);
        double north = south;
        for (int vertex = from + 1; vertex <= to; vertex++) {
            west = Math.min(west, lines.eastM(vertex));
            east = Math.max(east, lines.eastM(vertex));
            south = Math.min(south, lines.northM(vertex));
            north = Math.max(north, lines.northM(vertex));
        }
        sides[at] = PackedBoxes.down(west);
        sides[at + 1] = PackedBoxes.down(south);
        sides[at + 2] = PackedBoxes.up(east);
        sides[at + 3] = PackedBoxes.up(north);
    }
}
