package org.wadeplan.planner.decon;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the sheet of one cleaning must show, in the order it is worked through. The sheet is a record to fill and sign; it
 * never says that kit is safe.
 *
 * @param pests what the clean is against
 * @param lines the steps
 * @param signBoxes to fill once for the whole sheet
 * @param cautions what applies to these agents, and what always applies
 * @param disposal where baths and rinse water go
 * @param evidence each pest on each material with the row behind it
 * @param ruleVersion which tables the steps come from
 */
public record DeconSheetFacts(
        String kitSet,
        String crew,
        List<String> fromWaters,
        List<String> pests,
        List<Line> lines,
        List<String> signBoxes,
        List<ChemicalCaution> cautions,
        String disposal,
        List<String> evidence,
        Instant crewFree,
        Instant released,
        String reason,
        String ruleVersion) {

    /**
     * One step.
     *
     * @param plannedStart when it starts if every step before it took its minutes
     * @param target strength and temperature to reach
     * @param makeUp how to make the bath up or how hot to start, in words
     * @param boxes what to write down
     */
    public record Line(
            String step,
            String label,
            Instant plannedStart,
            int minutes,
            boolean crewBusy,
            Optional<String> resource,
            Optional<String> target,
            Optional<String> makeUp,
            List<String> boxes) {}
}
