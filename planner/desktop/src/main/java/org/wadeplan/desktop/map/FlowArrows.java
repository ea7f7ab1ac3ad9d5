package org.wadeplan.desktop.map;

import java.util.ArrayList;
import java.util.List;

/** Where arrows stand along a stream on the screen, pointing from source to mouth. */
final class FlowArrows {

    static final double SPACING_PX = 130;

    private FlowArrows() {}

    /**
     * An arrow's tip.
     *
     * @param angleRad direction of flow on the screen, 0 to the right, growing clockwise
     */
    record Arrow(double x, double y, double angleRad) {}

    /** One arrow in the middle of each {@value #SPACING_PX} pixels; a short stream that can be seen gets one. */
    static List<Arrow> along(StreamShape stream, ViewBox view) {
        if (stream.box().getDiameter() < 12 * view.metresPerPx()) {
            return List.of();
        }
        double length = lengthPx(stream, view);
        if (length < 24) {
            return List.of();
        }
        int count = (int) Math.max(1, Math.floor(length / SPACING_PX));
        double spacing = length / count;
        List<Arrow> arrows = new ArrayList<>();
        double walked = 0;
        double next = spacing / 2;
        for (int i = 1; i < stream.size(); i++) {
            double x0 = view.x(stream.eastM(i - 1));
            double y0 = view.y(stream.northM(i - 1));
            double dx = view.x(stream.eastM(i)) - x0;
            double dy = view.y(stream.northM(i)) - y0;
            double step = Math.hypot(dx, dy);
            while (step > 0 && next <= walked + step) {
                double share = (next - walked) / step;
                add(arrows, new Arrow(x0 + share * dx, y0 + share * dy, Math.atan2(dy, dx)), view);
                next += spacing;
            }
            walked += step;
        }
        return arrows;
    }

    private static void add(List<Arrow> arrows, Arrow arrow, ViewBox view) {
        if (arrow.x() > -10 && arrow.y() > -10 && arrow.x() < view.widthPx() + 10 && arrow.y() < view.heightPx() + 10) {
            arrows.add(arrow);
        }
    }

    private static double lengthPx(StreamShape stream, ViewBox view) {
        double sum = 0;
        for (int i = 1; i < stream.size(); i++) {
            sum += Math.hypot(stream.eastM(i) - stream.eastM(i - 1), stream.northM(i) - stream.northM(i - 1));
        }
        return sum / view.metresPerPx();
    }
}
