package org.wadeplan.hazards.limits;

import java.util.Locale;
import java.util.Optional;

/**
 * Alert levels for mats of toxic algae on a stream bed by the share of bed covered. Source: New Zealand interim
 * guidelines for cyanobacteria in recreational fresh waters, 2009. Which level the edges belong to is our choice: 20 goes
 * up to alert, 50 stays in alert. Mats that lift or dry at the edge are action at any cover.
 */
public enum BenthicMats {
    SURVEILLANCE,
    ALERT,
    ACTION;

    /** The level of a cover of 0 to 100 percent; empty outside. */
    public static Optional<BenthicMats> ofCoverPct(double coverPct) {
        if (!(coverPct >= 0 && coverPct <= 100)) {
            return Optional.empty();
        }
        if (coverPct > 50) {
            return Optional.of(ACTION);
        }
        return Optional.of(coverPct >= 20 ? ALERT : SURVEILLANCE);
    }

    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }
}
