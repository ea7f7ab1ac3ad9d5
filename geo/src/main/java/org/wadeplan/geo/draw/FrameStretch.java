package org.wadeplan.geo.draw;

import java.util.List;

/**
 * A stretch of one line that is drawn from, or left out, as a whole.
 *
 * @param line number of the line
 * @param fromM chainage of its upper end, metres
 * @param toM chainage of its lower end, metres, above {@code fromM}
 * @param stratum the part of the frame that it belongs to
 * @param standing whether it may be drawn
 * @param reasons why it is left out, in words, each once; empty where it may be drawn
 */
public record FrameStretch(
        int line, double fromM, double toM, String stratum, Standing standing, List<String> reasons) {

    public FrameStretch {
        reasons = List.copyOf(reasons);
        if (!(toM > fromM) || (standing == Standing.ELIGIBLE) != reasons.isEmpty()) {
            throw new IllegalArgumentException("A stretch needs a length, and a reason where it is left out: line "
                    + line + ", " + fromM + " to " + toM + " m, " + standing + " " + reasons);
        }
    }

    long fromMm() {
        return Math.round(fromM * 1000);
    }

    long toMm() {
        return Math.round(toM * 1000);
    }

    /** In whole millimetres, so that sums are exact. */
    long lengthMm() {
        return toMm() - fromMm();
    }
}
