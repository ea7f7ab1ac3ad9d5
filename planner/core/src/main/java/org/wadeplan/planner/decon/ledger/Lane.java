package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.List;
import org.wadeplan.planner.round.KitSet;

/**
 * All that is known of one kit set, or of one item outside a set.
 *
 * @param kit the set; for an item a set of its own that holds nothing else
 * @param item true for an item outside a set
 * @param pieces how many things the line of the store stands for: 1 for a kit set or a serial; where it is more, nobody can
 *     tell which of them was where
 * @param touches by time
 * @param treated by time
 */
public record Lane(KitSet kit, String label, boolean item, int pieces, List<Touch> touches, List<Treated> treated) {

    public String id() {
        return kit.id();
    }

    /** Touches that had begun by then; of a line of several pieces those that were over, since one piece is in one place. */
    public List<Touch> touchesBefore(Instant at) {
        return touches.stream()
                .filter(touch ->
                        pieces > 1 ? !touch.until().isAfter(at) : touch.from().isBefore(at))
                .toList();
    }
}
