package org.wadeplan.planner.method.margin;

import java.util.List;
import java.util.Optional;

/**
 * How near a site is to another method.
 *
 * @param rules numbers of the rules that match now
 * @param inputs in the order of the table
 * @param joint empty where no input states an uncertainty, or where no change of those gives another outcome
 * @param chances most likely first; only the outcome itself where no input states an uncertainty
 * @param uncertain inputs with a stated uncertainty; only these were varied for {@code joint} and {@code chances}
 * @param unknown inputs that are not known; margins are then not worked out
 */
public record SiteMargin(
        String site,
        String outcome,
        List<Integer> rules,
        List<InputMargin> inputs,
        Optional<JointFlip> joint,
        List<OutcomeChance> chances,
        List<String> uncertain,
        List<String> unknown) {

    /** How the chances are worked out. */
    public static final String METHOD = "each uncertain value counted as normal and independent of the others,"
            + " cut off at the possible values; exact over the boxes of the table, no sampling";
}
