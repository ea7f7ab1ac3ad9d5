package org.wadeplan.desktop.map;

import org.locationtech.jts.geom.Envelope;

/**
 * Which part of the plane is seen, and how large. North is up. For drawing only; nothing is measured through it.
 *
 * @param eastM easting of the middle, metres
 * @param northM northing of the middle, metres
 * @param metresPerPx ground metres for each pixel
 * @param widthPx width of the picture
 * @param heightPx height of the picture
 */
public record ViewBox(double eastM, double northM, double metresPerPx, double widthPx, double heightPx) {

    /** Closest look: 2 cm a pixel. */
    static final double CLOSEST = 0.02;
    /** Widest look: 20 km a pixel. */
    static final double WIDEST = 20_000;

    private static final double MARGIN = 0.08;

    /** Shows a whole area with some room around it. */
    public static ViewBox fitting(Envelope area, double widthPx, double heightPx) {
        double width = Math.max(1, widthPx);
        double height = Math.max(1, heightPx);
        double room = 1 + 2 * MARGIN;
        double metres = Math.max(area.getWidth() * room / width, area.getHeight() * room / height);
        return new ViewBox(
                (area.getMinX() + area.getMaxX()) / 2,
                (area.getMinY() + area.getMaxY()) / 2,
                bounded(Math.max(metres, CLOSEST)),
                width,
                height);
    }

    public double x(double east) {
        return widthPx / 2 + (east - eastM) / metresPerPx;
    }

    public double y(double north) {
        return heightPx / 2 - (north - northM) / metresPerPx;
    }

    public double east(double x) {
        return eastM + (x - widthPx / 2) * metresPerPx;
    }

    public double north(double y) {
        return northM - (y - heightPx / 2) * metresPerPx;
    }

    /** Larger by a factor above 1, smaller below; the place under the pixel stays under it. */
    public ViewBox zoomedAt(double x, double y, double factor) {
        double metres = bounded(metresPerPx / factor);
        return new ViewBox(
                east(x) - (x - widthPx / 2) * metres,
                north(y) + (y - heightPx / 2) * metres,
                metres,
                widthPx,
                heightPx);
    }

    /** The picture moves by these pixels, to the right and down. */
    public ViewBox panned(double dxPx, double dyPx) {
        return centredOn(eastM - dxPx * metresPerPx, northM + dyPx * metresPerPx);
    }

    public ViewBox centredOn(double east, double north) {
        return new ViewBox(east, north, metresPerPx, widthPx, heightPx);
    }

    public ViewBox sized(double width, double height) {
        return new ViewBox(eastM, northM, metresPerPx, Math.max(1, width), Math.max(1, height));
    }

    /** The ground that is seen. */
    public Envelope ground() {
        return new Envelope(east(0), east(widthPx), north(heightPx), north(0));
    }

    private static double bounded(double metres) {
        return Math.min(WIDEST, Math.max(CLOSEST, metres));
    }
}
