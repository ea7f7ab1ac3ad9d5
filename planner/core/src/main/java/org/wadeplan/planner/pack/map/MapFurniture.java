package org.wadeplan.planner.pack.map;

import java.util.Locale;
import org.wadeplan.planner.pack.map.Drawing.Anchor;

/** The frame of a map with its grid ticks, scale bar and north arrow. */
final class MapFurniture {

    private static final int[] STEPS_M = {
        10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000, 200_000
    };
    private static final double LEAST_STEP_MM = 28;

    private final MapFrame frame;
    private final Drawing drawing;
    private final double groundMm;

    /** @param groundMm height of the map itself; below it is the strip for scale and north */
    MapFurniture(MapFrame frame, Drawing drawing, double groundMm) {
        this.frame = frame;
        this.drawing = drawing;
        this.groundMm = groundMm;
    }

    void draw() {
        drawing.box(0, 0, drawing.widthMm(), groundMm, 0.5);
        gridTicks();
        scaleBar();
        northArrow();
    }

    /** The smallest round step that keeps labels apart. */
    private int stepM() {
        for (int step : STEPS_M) {
            if (frame.mm(step) >= LEAST_STEP_MM) {
                return step;
            }
        }
        return STEPS_M[STEPS_M.length - 1];
    }

    private void gridTicks() {
        int step = stepM();
        double width = drawing.widthMm();
        double height = groundMm;
        for (double east = firstFrom(frame.ground().getMinX(), step); frame.x(east) < width - 14; east += step) {
            double x = frame.x(east);
            drawing.segment(x, 0, x, 2.5, 0.3).segment(x, height - 2.5, x, height, 0.3);
            if (x > 14) {
                drawing.label(x, 4.6, 8.5, Anchor.CENTRED, String.format(Locale.ROOT, "E %.0f", east));
            }
        }
        for (double north = firstFrom(frame.ground().getMinY(), step); frame.y(north) > 10; north += step) {
            double y = frame.y(north);
            drawing.segment(0, y, 2.5, y, 0.3).segment(width - 2.5, y, width, y, 0.3);
            if (y < height - 4) {
                drawing.label(3.2, y, 8.5, Anchor.RIGHT_OF, String.format(Locale.ROOT, "N %.0f", north));
            }
        }
    }

    private static double firstFrom(double edge, int step) {
        return Math.ceil(edge / step) * step;
    }

    private void scaleBar() {
        int lengthM = stepM();
        double lengthMm = frame.mm(lengthM);
        double left = 6;
        double y = groundMm + 7.5;
        drawing.segment(left, y, left + lengthMm, y, 0.5);
        for (int halves = 0; halves <= 2; halves++) {
            double x = left + lengthMm * halves / 2;
            drawing.segment(x, y - 1.5, x, y + 1.5, 0.4);
            String words = halves == 2 ? lengthM + " m" : half(lengthM, halves);
            drawing.label(x, y - 3.6, 9, Anchor.CENTRED, words);
        }
        drawing.label(left + lengthMm + 4, y, 9, Anchor.RIGHT_OF, "1:" + frame.scale());
    }

    private void northArrow() {
        double x = drawing.widthMm() - 24;
        double top = groundMm + 1.5;
        drawing.segment(x, top, x, top + 8.5, 0.5);
        drawing.segment(x, top, x - 1.6, top + 3, 0.5).segment(x, top, x + 1.6, top + 3, 0.5);
        drawing.boldLabel(x + 3, top + 4, 10, Anchor.RIGHT_OF, "grid north");
    }

    private static String half(int lengthM, int halves) {
        return lengthM * halves % 2 == 0
                ? Integer.toString(lengthM * halves / 2)
                : String.format(Locale.ROOT, "%.1f", lengthM * halves / 2.0);
    }
}
