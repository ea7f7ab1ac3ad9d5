package org.wadeplan.hazards.register;

import java.util.Locale;

/** What it means for a hazard that nobody has told us. Never that the hazard is absent. */
public enum WhenUnknown implements Keyed {
    /** The worst plausible value is assumed, so the hazard applies and says "not known". */
    COUNTS,
    /** The hazard is not listed, and its question is asked before anyone goes in. */
    ASK;

    @Override
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
