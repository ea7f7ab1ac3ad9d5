package org.wadeplan.planner.hazard;

import java.time.Instant;
import org.wadeplan.planner.round.CheckInRules;

/**
 * When the last call of a visit is due and when its crew counts as overdue: one sum for the briefing, the run sheet and the
 * emergency card, so that they cannot differ.
 *
 * @param lastCallDue the planned end plus the check-in interval
 * @param overdue that plus the round's grace
 */
public record CheckInTimes(Instant lastCallDue, Instant overdue) {

    public static CheckInTimes after(Instant plannedEnd, CheckInRules rules) {
        Instant due = plannedEnd.plusSeconds(60L * rules.everyMin());
        return new CheckInTimes(due, due.plusSeconds(60L * rules.overdueAfterMin()));
    }
}
