package org.wadeplan.planner.draw;

/** Which point of a reach the drawn point becomes. */
public enum ReachPoint {
    /** The downstream end, where a reach starts. */
    START("the downstream end"),
    /** The middle. */
    MIDDLE("the middle");

    private final String words;

    ReachPoint(String words) {
        this.words = words;
    }

    /** {@code the downstream end} */
    public String words() {
        return words;
    }

    /** How far below the drawn point the reach starts, in metres. */
    double startBelowM(double reachLengthM) {
        return this == START ? 0 : reachLengthM / 2;
    }
}
