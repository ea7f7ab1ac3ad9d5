package org.wadeplan.hazards.limits;

/** The hazard rating of a United Kingdom government note of 2008 on flood risks to people: a second opinion only. */
public final class FloodRating {

    public static final String SOURCE = "UK Defra and Environment Agency 2008, flood hazard rating";

    private FloodRating() {}

    /**
     * Depth times (speed + 0.5) plus the debris factor; no unit. Under 0.75 low, to 1.25 danger for some, to 2.0 for most,
     * above for all (bands from memory).
     *
     * @param depthM 0 to 10
     * @param velocityMS 0 to 10
     * @param debrisFactor 0, 0.5 or 1 by depth and land use; 0 to 1
     */
    public static Estimate of(double depthM, double velocityMS, double debrisFactor) {
        return Span.of("the flood hazard rating")
                .within("Depth in m", depthM, 0, 10)
                .within("Speed in m/s", velocityMS, 0, 10)
                .within("Debris factor", debrisFactor, 0, 1)
                .then(() -> depthM * (velocityMS + 0.5) + debrisFactor);
    }
}
