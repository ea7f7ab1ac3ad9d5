package org.wadeplan.geo.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.SegmentIndex.Snap;

/** Looks at every segment of every line, without any index: slow, and too plain to be wrong. */
final class BruteForce {

    private static final Comparator<Snap> NEAREST = Comparator.comparingDouble(Snap::distanceM)
            .thenComparingInt(Snap::line)
            .thenComparingDouble(Snap::chainageM);

    private BruteForce() {}

    static List<Snap> nearest(LineSet lines, MetricPoint place, int most, double withinM) {
        List<Snap> best = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            onLine(lines, line, place).stream().min(NEAREST).ifPresent(best::add);
        }
        return best.stream()
                .filter(snap -> snap.distanceM() <= withinM)
                .sorted(NEAREST)
                .limit(most)
                .toList();
    }

    private static List<Snap> onLine(LineSet lines, int line, MetricPoint place) {
        List<Snap> all = new ArrayList<>();
        for (int end = lines.firstVertex(line) + 1; end < lines.endVertex(line); end++) {
            double east0 = lines.eastM(end - 1);
            double north0 = lines.northM(end - 1);
            double east = lines.eastM(end) - east0;
            double north = lines.northM(end) - north0;
            double along = ((place.eastM() - east0) * east + (place.northM() - north0) * north)
                    / (east * east + north * north);
            MetricPoint at = along <= 0
                    ? new MetricPoint(east0, north0)
                    : along >= 1
                            ? new MetricPoint(lines.eastM(end), lines.northM(end))
                            : new MetricPoint(east0 + along * east, north0 + along * north);
            double stepM = lines.chainageM(end) - lines.chainageM(end - 1);
            double atM = along <= 0
                    ? lines.chainageM(end - 1)
                    : along >= 1 ? lines.chainageM(end) : lines.chainageM(end - 1) + along * stepM;
            double asideE = at.eastM() - place.eastM();
            double asideN = at.northM() - place.northM();
            all.add(new Snap(line, atM, Math.sqrt(asideE * asideE + asideN * asideN), at));
        }
        return all;
    }
}
