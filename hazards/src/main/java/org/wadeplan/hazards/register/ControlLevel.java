package org.wadeplan.hazards.register;

import java.util.Locale;

/** Kinds of control, best first: the hierarchy of ISO 45001 clause 8.1.2. Credits are a local setting. */
public enum ControlLevel implements Keyed {
    ELIMINATE("Eliminate", 0),
    SUBSTITUTE("Substitute", 2),
    ENGINEER("Engineer", 2),
    ADMINISTER("Administer", 1),
    PPE("PPE", 1);

    private final String words;
    private final int creditSteps;

    ControlLevel(String words, int creditSteps) {
        this.words = words;
        this.creditSteps = creditSteps;
    }

    /**
     * Steps of likelihood that all controls of this level together may earn. Eliminating earns none here: it removes
     * the hazard.
     */
    public int creditSteps() {
        return creditSteps;
    }

    @Override
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String words() {
        return words;
    }
}
