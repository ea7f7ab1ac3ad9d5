package org.wadeplan.planner.method.audit;

/**
 * A site of the round that a finding concerns.
 *
 * @param words the readings that put it there, or keep it out so far
 */
public record SiteHit(String site, How how, String words) {

    /** How surely, most surely first. */
    public enum How {
        /** Its planned conditions lie in the region. */
        HIT,
        /** They may: something that matters is not known. */
        POSSIBLE,
        /** They lie within one standard uncertainty of it. */
        NEAR
    }
}
