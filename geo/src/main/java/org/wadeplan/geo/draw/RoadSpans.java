package org.wadeplan.geo.draw;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.access.Roads;
import org.wadeplan.geo.draw.AreaSpans.Span;
import org.wadeplan.geo.lines.LineSet;

/**
 * Which stretches of lines lie further from every road than a distance, in a straight line.
 *
 * <p>A line is looked at in steps of at most 25 m, each by its middle, so an end of a stretch is good to half a step.
 */
public final class RoadSpans {

    private static final double STEP_M = 25;

    private RoadSpans() {}

    /** Every stretch beyond the distance, by line and then downstream. */
    public static List<Span> beyond(LineSet lines, Roads roads, double withinM) {
        List<Span> spans = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            beyond(lines, line, roads, withinM, spans);
        }
        return spans;
    }

    private static void beyond(LineSet lines, int line, Roads roads, double withinM, List<Span> spans) {
        double lengthM = lines.lengthM(line);
        int steps = (int) Math.ceil(lengthM / STEP_M);
        int first = -1;
        for (int step = 0; step <= steps; step++) {
            boolean far = step < steps
                    && roads.nearest(lines.at(line, lengthM * (step + 0.5) / steps), withinM)
                            .isEmpty();
            if (far && first < 0) {
                first = step;
            } else if (!far && first >= 0) {
                spans.add(new Span(line, lengthM * first / steps, lengthM * step / steps));
                first = -1;
            }
        }
    }
}
