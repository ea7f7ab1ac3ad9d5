package org.wadeplan.desktop.map;

import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Draws stream lines straight into pixels: tens of thousands of lines take some milliseconds where a canvas takes
 * seconds. For the eye only: vertices that fall on the same pixel are passed over here, and nowhere else.
 */
final class StreamRaster {

    private final int width;
    private final int height;
    private final int[] coverage;

    StreamRaster(int width, int height) {
        this.width = width;
        this.height = height;
        this.coverage = new int[width * height];
    }

    /**
     * Draws them all.
     *
     * @param scale raster pixels for each pixel of the view
     * @param thickPx line width in raster pixels
     */
    void draw(List<StreamShape> streams, ViewBox view, double scale, double thickPx) {
        Arrays.fill(coverage, 0);
        Envelope ground = view.ground();
        for (StreamShape stream : streams) {
            if (ground.intersects(stream.box())) {
                draw(stream, view, scale, thickPx);
            }
        }
    }

    private void draw(StreamShape stream, ViewBox view, double scale, double thickPx) {
        double x0 = view.x(stream.eastM(0)) * scale;
        double y0 = view.y(stream.northM(0)) * scale;
        if (stream.box().getDiameter() < 0.7 * view.metresPerPx()) {
            cover((int) x0, (int) y0, 0.8);
            return;
        }
        int last = stream.size() - 1;
        for (int i = 1; i <= last; i++) {
            double x1 = view.x(stream.eastM(i)) * scale;
            double y1 = view.y(stream.northM(i)) * scale;
            if (i == last || Math.abs(x1 - x0) > 0.7 || Math.abs(y1 - y0) > 0.7) {
                if (Math.abs(x1 - x0) >= Math.abs(y1 - y0)) {
                    flat(x0, y0, x1, y1, thickPx);
                } else {
                    steep(x0, y0, x1, y1, thickPx);
                }
                x0 = x1;
                y0 = y1;
            }
        }
    }

    private void flat(double x0, double y0, double x1, double y1, double thickPx) {
        double slope = x1 == x0 ? 0 : (y1 - y0) / (x1 - x0);
        double half = thickPx / 2 * Math.hypot(1, slope);
        int from = (int) Math.max(0, Math.floor(Math.min(x0, x1)));
        int to = (int) Math.min(width - 1.0, Math.ceil(Math.max(x0, x1)));
        for (int x = from; x <= to; x++) {
            double y = y0 + (x - x0) * slope;
            for (int row = (int) Math.floor(y - half); row <= Math.ceil(y + half); row++) {
                cover(x, row, half + 0.5 - Math.abs(row - y));
            }
        }
    }

    private void steep(double x0, double y0, double x1, double y1, double thickPx) {
        double slope = (x1 - x0) / (y1 - y0);
        double half = thickPx / 2 * Math.hypot(1, slope);
        int from = (int) Math.max(0, Math.floor(Math.min(y0, y1)));
        int to = (int) Math.min(height - 1.0, Math.ceil(Math.max(y0, y1)));
        for (int y = from; y <= to; y++) {
            double x = x0 + (y - y0) * slope;
            for (int column = (int) Math.floor(x - half); column <= Math.ceil(x + half); column++) {
                cover(column, y, half + 0.5 - Math.abs(column - x));
            }
        }
    }

    private void cover(int x, int y, double share) {
        if (share > 0 && x >= 0 && y >= 0 && x < width && y < height) {
            int alpha = (int) (255 * Math.min(1, share));
            int at = y * width + x;
            coverage[at] = Math.max(coverage[at], alpha);
        }
    }

    /** Writes premultiplied ARGB of one colour. */
    void copyTo(IntBuffer pixels, int red, int green, int blue) {
        for (int i = 0; i < coverage.length; i++) {
            int alpha = coverage[i];
            int r = red * alpha / 255;
            int g = green * alpha / 255;
            int b = blue * alpha / 255;
            pixels.put(i, (alpha << 24) | (r << 16) | (g << 8) | b);
        }
    }

    /** How many pixels carry some of a line. */
    int covered() {
        return (int) Arrays.stream(coverage).filter(alpha -> alpha > 0).count();
    }
}
