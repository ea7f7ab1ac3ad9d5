package org.wadeplan.planner.decon.trace;

import java.time.Instant;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.Touch;

/** Whether something was treated against a pest after a touch, by evidence of any grade but X, on every material. */
final class Support {

    private Support() {}

    static boolean treated(Lane lane, Touch touch, String pest, Instant by) {
        return lane.kit().materials().stream().allMatch(material -> lane.treated().stream()
                .filter(treated -> !treated.start().isBefore(touch.until()))
                .flatMap(treated -> treated.credits().stream())
                .anyMatch(credit -> !credit.from().isAfter(by)
                        && credit.cover().pest().equals(pest)
                        && credit.cover().material() == material));
    }
}
