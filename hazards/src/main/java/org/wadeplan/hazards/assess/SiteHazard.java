package org.wadeplan.hazards.assess;

import java.util.List;
import java.util.Optional;
import org.wadeplan.hazards.register.Control;

/**
 * A hazard that a person saw at this site.
 *
 * @param hazardId row of the register that it is an instance of; empty where there is none
 * @param text what was seen, to be read aloud
 * @param subReach letter of the sub-reach, where it is in one place
 * @param newSinceLast true where the crew's last visit did not know it
 * @param rating by the person who saw it; where empty and the register has no row, the worst plausible counts
 * @param controls beyond those of the register
 */
public record SiteHazard(
        Optional<String> hazardId,
        String text,
        Optional<String> subReach,
        boolean newSinceLast,
        Optional<RiskScore> rating,
        List<Control> controls) {

    public SiteHazard {
        if (text.isBlank()) {
            throw new IllegalArgumentException("A site hazard needs words");
        }
        controls = List.copyOf(controls);
    }

    public static SiteHazard of(String hazardId, String text) {
        return new SiteHazard(Optional.of(hazardId), text, Optional.empty(), false, Optional.empty(), List.of());
    }

    public static SiteHazard freeText(String text) {
        return new SiteHazard(Optional.empty(), text, Optional.empty(), false, Optional.empty(), List.of());
    }

    public SiteHazard inSubReach(String letter) {
        return new SiteHazard(hazardId, text, Optional.of(letter), newSinceLast, rating, controls);
    }

    public SiteHazard asNew() {
        return new SiteHazard(hazardId, text, subReach, true, rating, controls);
    }

    /** {@code Sub-reach F: pool of 0.74 m} */
    public String sentence() {
        return subReach.map(letter -> "Sub-reach " + letter + ": " + text).orElse(text);
    }
}
