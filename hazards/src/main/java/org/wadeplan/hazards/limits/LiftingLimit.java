package org.wadeplan.hazards.limits;

/** The recommended weight of one lift by the revised equation of the US institute NIOSH (1991; Waters and others 1993). */
public final class LiftingLimit {

    public static final String SOURCE = "NIOSH revised lifting equation 1991, metric form (from memory)";

    /**
     * How a lift is done.
     *
     * @param reachCm hands from the ankles, 25 to 63
     * @param heightCm hands above the floor at the start, 0 to 175
     * @param travelCm how far up or down, 25 to 175
     * @param twistDeg turn of the body, 0 to 135
     * @param frequencyFactor from the NIOSH table, above 0 to 1
     * @param gripFactor from the NIOSH table, 0.9 to 1
     */
    public record Lift(
            double reachCm,
            double heightCm,
            double travelCm,
            double twistDeg,
            double frequencyFactor,
            double gripFactor) {}

    private static final double LOAD_CONSTANT_KG = 23;

    private LiftingLimit() {}

    /** Kilograms; 23 for the best lift there is. On a rough bank in waders the real figure is lower. */
    public static Estimate recommendedKg(Lift lift) {
        return Span.of("the lifting equation")
                .within("Reach in cm", lift.reachCm(), 25, 63)
                .within("Height of the hands in cm", lift.heightCm(), 0, 175)
                .within("Travel of the lift in cm", lift.travelCm(), 25, 175)
                .within("Twist in degrees", lift.twistDeg(), 0, 135)
                .within("Frequency factor", lift.frequencyFactor(), 0, 1)
                .within("Grip factor", lift.gripFactor(), 0.9, 1)
                .then(() -> LOAD_CONSTANT_KG
                        * (25 / lift.reachCm())
                        * (1 - 0.003 * Math.abs(lift.heightCm() - 75))
                        * (0.82 + 4.5 / lift.travelCm())
                        * (1 - 0.0032 * lift.twistDeg())
                        * lift.frequencyFactor()
                        * lift.gripFactor());
    }
}
