package org.wadeplan.hazards.assess;

/** Where today's plan stands against a stop limit. None of these says that a site may be entered. */
public enum StopState {
    BREACHED("STOP"),
    NOT_KNOWN("not known: measure before anyone goes in"),
    WATCH("watch"),
    NOT_REACHED("not reached by the plan");

    private final String words;

    StopState(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
