package org.wadeplan.planner.decon;

import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;

/**
 * What a kit set needs between two waters.
 *
 * @param kitSet the kit set, because its items decide
 * @param fromWater the water it comes from
 * @param toWater the water it goes to
 * @param steps in order; drying last
 * @param crewMin minutes for which people are busy
 * @param unattendedMin minutes after that before the kit is released
 * @param covers each pest on each material with the evidence that covers it
 * @param uncovered pairs that no row supports: such a leg is refused
 * @param reason why these steps, in sentences
 * @param tier how much care the source and the destination ask for; empty in a plan written before there were tiers
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
        String reason,
        Optional<Tier> tier) {

    /** Without a tier. */
    public Turnaround(
            String kitSet,
            String fromWater,
            String toWater,
            List<DeconStep> steps,
            int crewMin,
            int unattendedMin,
            List<Cover> covers,
            List<Uncovered> uncovered,
            String reason) {
        this(kitSet, fromWater, toWater, steps, crewMin, unattendedMin, covers, uncovered, reason, Optional.empty());
    }

    /**
     * One pest on one material, and the evidence row that covers it.
     *
     * @param stage the life stage it is about, where the table tells stages apart: all of them are covered then
     */
    public record Cover(
            String pest,
            Material material,
            String treatment,
            EvidenceGrade grade,
            String source,
            Optional<String> stage) {

        /** Of the pest as a whole. */
        public Cover(String pest, Material material, String treatment, EvidenceGrade grade, String source) {
            this(pest, material, treatment, grade, source, Optional.empty());
        }
    }

    /** One pest on one material that nothing covers, and why each candidate failed. */
    public record Uncovered(String pest, Material material, String why) {}

    public boolean possible() {
        return uncovered.isEmpty();
    }

    public int totalMin() {
        return crewMin + unattendedMin;
    }

    /** The same with more to say. */
    Turnaround saying(String more) {
        return new Turnaround(
                kitSet, fromWater, toWater, steps, crewMin, unattendedMin, covers, uncovered, reason + more, tier);
    }
}
