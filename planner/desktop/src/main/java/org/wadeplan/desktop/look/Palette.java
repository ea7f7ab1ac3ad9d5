package org.wadeplan.desktop.look;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;

/**
 * The colours of the pictures. Chosen so that blue against brown against green-blue stays apart for people who see red
 * and green alike; each also has its own hatch or shape. The style sheet names the same values.
 */
public final class Palette {

    public static final Color INK = Color.web("#1b2a30");
    public static final Color QUIET = Color.web("#4e5d62");
    public static final Color PAPER = Color.web("#fbfaf6");
    public static final Color STREAM = Color.web("#0b5f86");
    public static final Color CATCHMENT = Color.web("#66723f");
    public static final Color CATCHMENT_FILL = Color.web("#f0f2e4");
    public static final Color REACH = Color.web("#16343f");
    public static final Color SELECTED = Color.web("#a8005a");
    public static final Color ERROR = Color.web("#9c1f0a");
    public static final Color WARNING = Color.web("#7a4b00");
    public static final Color NOTE = Color.web("#1c5a7a");
    public static final Color GOOD = Color.web("#1f6b3a");

    private Palette() {}

    /** Two-colour stripes at a slope, for areas on a canvas. */
    public static Paint hatch(Color ground, Color stripe, double spacingPx) {
        return new LinearGradient(
                0,
                0,
                spacingPx,
                spacingPx,
                false,
                CycleMethod.REPEAT,
                List.of(new Stop(0, stripe), new Stop(0.22, stripe), new Stop(0.22, ground), new Stop(1, ground)));
    }

    /**
     * How well two colours can be told apart in brightness, 1 to 21.
     *
     * <p>Contrast ratio of WCAG 2.1, success criterion 1.4.3, with its relative luminance.
     */
    public static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
