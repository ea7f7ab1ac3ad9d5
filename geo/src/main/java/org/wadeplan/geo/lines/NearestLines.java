package org.wadeplan.geo.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.SegmentIndex.Snap;

/**
 * The best answers so far while one place is looked for: the nearest point of each of the nearest lines, by distance, then
 * line, then chainage. What comes out does not depend on the order in which segments come in.
 */
final class NearestLines {

    /** So many metres further is still looked at: a box's distance and a segment's are rounded apart. */
    private static final double ROUNDING_M = 1e-6;

    private final LineSet lines;
    private final double eastM;
    private final double northM;
    private final int most;
    private final double withinM;

    private int count;
    private int[] line = new int[4];
    private int[] end = new int[4];
    private double[] share = new double[4];
    private double[] distanceM = new double[4];
    private double boundM2;

    NearestLines(LineSet lines, MetricPoint place, int most, double withinM) {
        this.lines = lines;
        this.eastM = place.eastM();
        this.northM = place.northM();
        this.most = most;
        this.withinM = withinM;
        this.boundM2 = bound(withinM);
    }

    private static double bound(double distanceM) {
        double further = distanceM * (1 + 1e-9) + ROUNDING_M;
        return further * further;
    }

    /** Nothing further off than the root of this can be among the answers. */
    double boundM2() {
        return boundM2;
    }

    /** Looks at the segments between two vertices of a line. */
    void addRun(int ofLine, int from, int to) {
        double east0 = lines.eastM(from);
        double north0 = lines.northM(from);
        for (int vertex = from + 1; vertex <= to; vertex++) {
            double east1 = lines.eastM(vertex);
            double north1 = lines.northM(vertex);
            double along = PlaneSegment.share(eastM, northM, east0, north0, east1, north1);
            double east = PlaneSegment.at(east0, east1, along) - eastM;
            double north = PlaneSegment.at(north0, north1, along) - northM;
            double found = east * east + north * north;
            if (found <= boundM2) {
                offer(ofLine, vertex, along, Math.sqrt(found));
            }
            east0 = east1;
            north0 = north1;
        }
    }

    List<Snap> snaps() {
        List<Snap> snaps = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            snaps.add(new Snap(line[i], chainageM(end[i], share[i]), distanceM[i], at(end[i], share[i])));
        }
        return snaps;
    }

    private double chainageM(int vertex, double along) {
        return PlaneSegment.at(lines.chainageM(vertex - 1), lines.chainageM(vertex), along);
    }

    private MetricPoint at(int vertex, double along) {
        return new MetricPoint(
                PlaneSegment.at(lines.eastM(vertex - 1), lines.eastM(vertex), along),
                PlaneSegment.at(lines.northM(vertex - 1), lines.northM(vertex), along));
    }

    private void offer(int ofLine, int vertex, double along, double foundM) {
        if (foundM > withinM) {
            return;
        }
        int known = 0;
        while (known < count && line[known] != ofLine) {
            known++;
        }
        if (known < count && !comesBefore(ofLine, vertex, along, foundM, known)) {
            return;
        }
        if (known == count) {
            if (count == most && !comesBefore(ofLine, vertex, along, foundM, count - 1)) {
                return;
            }
            known = count < most ? opened() : count - 1;
        }
        while (known > 0 && comesBefore(ofLine, vertex, along, foundM, known - 1)) {
            put(known, line[known - 1], end[known - 1], share[known - 1], distanceM[known - 1]);
            known--;
        }
        put(known, ofLine, vertex, along, foundM);
        if (count == most) {
            boundM2 = bound(distanceM[count - 1]);
        }
    }

    private boolean comesBefore(int ofLine, int vertex, double along, double foundM, int than) {
        if (foundM != distanceM[than]) {
            return foundM < distanceM[than];
        }
        if (ofLine != line[than]) {
            return ofLine < line[than];
        }
        return vertex != end[than] ? vertex < end[than] : along < share[than];
    }

    private int opened() {
        if (count == line.length) {
            line = Arrays.copyOf(line, 2 * count);
            end = Arrays.copyOf(end, 2 * count);
            share = Arrays.copyOf(share, 2 * count);
            distanceM = Arrays.copyOf(distanceM, 2 * count);
        }
        return count++;
    }

    private void put(int at, int ofLine, int vertex, double along, double foundM) {
        line[at] = ofLine;
        end[at] = vertex;
        share[at] = along;
        distanceM[at] = foundM;
    }
}
