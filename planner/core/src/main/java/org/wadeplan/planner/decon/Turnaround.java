package org.wadeplan.planner.decon;

import java.util.List;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;

/**
 * What a kit set needs between two waters.
 *
 * @param kitSet the kit set, because its materials decide
 * @param fromWater the water it comes from
 * @param toWater the water it goes to
 * @param steps in order; drying last
 * @param crewMin minutes for which people are busy
 * @param unattendedMin minutes after that before the kit is released
 * @param covers each pest on each material with the evidence that covers it
 * @param uncovered pairs that no row supports: such a leg is refused
 * @param reason why these steps, in a sentence
 */
public record Turnaround(
        String kitSet,
        String fromWater,
        String toWater,
        List<DeconStep> steps,
        int crewMin,
        int unattendedMin,
        List<Cover> covers,
        List<Uncovered> uncovered,
        String reason) {

    /** One pest on one material, and the evidence row that covers it. */
    public record Cover(String pest, Material material, String treatment, EvidenceGrade grade, String source) {}

    /** One pest on one material that nothing covers, and why each candidate failed. */
    public record Uncovered(String pest, Material material, String why) {}

    public boolean possible() {
        return uncovered.isEmpty();
    }

    public int totalMin() {
        return crewMin + unattendedMin;
    }
}
