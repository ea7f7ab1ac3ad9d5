package org.wadeplan.hazards.limits;

import java.util.Locale;

/**
 * The Australian flow-hazard class for a grown person (height times mass above 50 m.kg) in moving water.
 *
 * <p>The upper edge belongs to the lower class; print does not say, so this is our choice. The table is from memory of Cox,
 * Shand and Blacka 2010, Appropriate Safety Criteria for People. None of the classes promises anything: the flumes had smooth floors.
 */
public enum FlowClass {
    LOW,
    MODERATE,
    SIGNIFICANT,
    EXTREME,
    EXCEEDS_DEPTH_CAP,
    EXCEEDS_VELOCITY_CAP;

    public static final String SOURCE =
            "Cox, Shand and Blacka 2010, Appropriate Safety Criteria for People (from memory)";

    static final double DEPTH_CAP_M = 1.2;
    static final double VELOCITY_CAP_MS = 3.0;

    /** The class at a depth and a speed, both 0 or more. */
    public static FlowClass ofAdult(double depthM, double velocityMS) {
        if (!(depthM >= 0 && velocityMS >= 0)) {
            throw new IllegalArgumentException("Depth and speed start at 0: " + depthM + " m, " + velocityMS + " m/s");
        }
        if (depthM > DEPTH_CAP_M) {
            return EXCEEDS_DEPTH_CAP;
        }
        if (velocityMS > VELOCITY_CAP_MS) {
            return EXCEEDS_VELOCITY_CAP;
        }
        return ofProduct(WadingLimit.productM2S(depthM, velocityMS));
    }

    private static FlowClass ofProduct(double depthVelocityM2S) {
        if (depthVelocityM2S <= 0.6) {
            return LOW;
        }
        if (depthVelocityM2S <= 0.8) {
            return MODERATE;
        }
        return depthVelocityM2S <= 1.2 ? SIGNIFICANT : EXTREME;
    }

    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
