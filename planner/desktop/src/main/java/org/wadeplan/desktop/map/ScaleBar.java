package org.wadeplan.desktop.map;

import java.util.Locale;

/**
 * A round length and how long it is drawn.
 *
 * @param lengthM 1, 2 or 5 times a power of ten, metres
 * @param lengthPx at the picture's scale
 */
record ScaleBar(double lengthM, double lengthPx) {

    /** The longest round length that still fits. */
    static ScaleBar within(double mostPx, double metresPerPx) {
        double most = mostPx * metresPerPx;
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double length = most >= 5 * power ? 5 * power : most >= 2 * power ? 2 * power : power;
        return new ScaleBar(length, length / metresPerPx);
    }

    /** {@code 200 m}, {@code 5 km} */
    String words() {
        return lengthM >= 1000 ? whole(lengthM / 1000) + " km" : whole(lengthM) + " m";
    }

    private static String whole(double number) {
        return number >= 1 ? String.format(Locale.ROOT, "%.0f", number) : String.format(Locale.ROOT, "%.2f", number);
    }
}
