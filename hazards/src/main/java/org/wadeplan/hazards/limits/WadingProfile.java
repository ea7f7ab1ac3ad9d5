package org.wadeplan.hazards.limits;

import java.util.List;

/**
 * How far one kind of wader may go: a row of the wading table.
 *
 * @param id stable name in files
 * @param words what the person is, as said to a crew
 * @param depthVelocityM2S depth times speed, m2/s; the edge is allowed
 * @param depthM deepest step, m; the edge is allowed
 * @param velocityMS fastest water, m/s; the edge is allowed
 * @param source where the row comes from
 */
public record WadingProfile(
        String id, String words, double depthVelocityM2S, double depthM, double velocityMS, String source) {

    private static final String LOCAL = "local setting under the published caps of 1.2 m and 3.0 m/s";

    /** A new person, or one whom nobody has assessed: also what an unknown person counts as. */
    public static final WadingProfile NEW = new WadingProfile("new", "new or unassessed wader", 0.4, 0.6, 1.0, LOCAL);

    public static final WadingProfile STANDARD = new WadingProfile("standard", "standard adult", 0.6, 0.8, 1.5, LOCAL);

    /** Only with flotation worn and someone with a throw line below. */
    public static final WadingProfile TRAINED =
            new WadingProfile("trained", "trained, flotation worn, cover below", 0.8, 1.0, 2.0, LOCAL);

    /** No profile may pass these: 10 ft2/s is exactly this many m2/s. */
    public static final double NOBODY_M2S = 0.929_030_4;

    public WadingProfile {
        boolean sane = depthVelocityM2S > 0 && depthM > 0 && velocityMS > 0;
        boolean capped = depthVelocityM2S < NOBODY_M2S
                && depthM <= FlowClass.DEPTH_CAP_M
                && velocityMS <= FlowClass.VELOCITY_CAP_MS;
        if (!sane || !capped || source.isBlank()) {
            throw new IllegalArgumentException("Wading profile " + id
                    + " needs a source and limits above 0, under 0.929 m2/s and up to 1.2 m and 3.0 m/s");
        }
    }

    /** The shipped rows, tightest first. */
    public static List<WadingProfile> shipped() {
        return List.of(NEW, STANDARD, TRAINED);
    }
}
