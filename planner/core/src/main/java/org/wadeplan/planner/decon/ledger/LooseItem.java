package org.wadeplan.planner.decon.ledger;

import java.util.Optional;
import org.wadeplan.planner.week.DeconTask;

/**
 * An item outside the kit sets that is cleaned when the set is that it was used with.
 *
 * @param care what it gets, for people to do: {@code into the bath with the set}
 * @param covered false where no row covers it, so that it stays with the water it was in
 */
public record LooseItem(String id, String label, int pieces, String care, boolean covered) {

    static final String INTO_THE_BATH = "into the bath with the set";

    /** Empty for a kit set, or an item that was last used with another set. */
    static Optional<LooseItem> of(Lane lane, DeconTask task) {
        boolean usedWith = lane.item()
                && ItemLanes.lastUsedWith(lane.touches(), task.start()).contains(task.kitSet());
        return lane.treated().stream()
                .filter(treated -> usedWith && treated.start().equals(task.start()))
                .findFirst()
                .map(treated -> new LooseItem(
                        lane.id(),
                        lane.label(),
                        lane.pieces(),
                        care(treated),
                        !treated.credits().isEmpty()));
    }

    private static String care(Treated treated) {
        if (treated.credits().isEmpty()) {
            return "not covered, keep it to the water it was in: " + String.join("; ", treated.reasons());
        }
        return treated.steps().isEmpty() ? treated.what() : INTO_THE_BATH;
    }
}
