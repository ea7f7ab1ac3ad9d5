package org.wadeplan.geo.terrain;

import java.util.Locale;

/**
 * The slope along a stretch of line with the window it was fitted over.
 *
 * @param slope percent over a window, or why there is none
 * @param fromM chainage of the window's upper end, metres; 0 where there is no window
 * @param toM chainage of the window's lower end, metres
 * @param plusMinusPercent how far the slope can be off because of steps and straying heights, percent; 0 where there is none
 * @param shortened whether the line is too short for the window that was wanted
 */
public record FittedSlope(Slope slope, double fromM, double toM, double plusMinusPercent, boolean shortened) {

    static FittedSlope unresolved(String reason) {
        return new FittedSlope(new Slope.Unresolved(reason), 0, 0, 0, false);
    }

    /** {@code 1.40 % ± 0.30 over 500 m (pool-riffle or plane-bed)} or {@code not resolved: …}. */
    public String words() {
        if (slope instanceof Slope.Fitted fitted) {
            return String.format(
                    Locale.ROOT,
                    "%.2f %% ± %.2f over %.0f m%s (%s)",
                    fitted.percent(),
                    plusMinusPercent,
                    fitted.windowM(),
                    shortened ? ", all of the line" : "",
                    ChannelType.words(fitted.percent()));
        }
        return "not resolved: " + ((Slope.Unresolved) slope).reason();
    }
}
