package org.wadeplan.desktop.week;

import java.time.LocalDate;
import java.util.List;

/**
 * A day: what stands behind it, and its lanes.
 *
 * @param sky sun and tide in words
 */
public record DayBand(LocalDate date, String label, String sky, List<Shade> shades, List<Lane> lanes) {

    /** Minutes count from the day's local midnight. */
    public record Shade(ShadeKind kind, int fromMin, int toMin, String words) {}

    /** What lies behind a stretch of the day. */
    public enum ShadeKind {
        NIGHT,
        DUSK,
        LOW_WATER
    }
}
