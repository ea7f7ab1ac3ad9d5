package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.util.Optional;
import org.wadeplan.desktop.session.WeekInForce;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.Treated;
import org.wadeplan.planner.decon.schedule.BathPlan;
import org.wadeplan.planner.decon.schedule.BenchTask;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * A week seen from its cleanings.
 *
 * @param ledger what each kit set touches and how it is treated
 * @param baths the cleanings by the clock with their baths
 */
record CleaningWeek(Round round, WeekPlan week, ExposureLedger ledger, BathPlan baths) {

    static CleaningWeek of(Round round, WeekInForce inForce) {
        return new CleaningWeek(
                round,
                inForce.week(),
                ExposureLedger.of(round, inForce.week(), inForce.kit()),
                BathPlan.of(round, inForce.week()));
    }

    /** A step whose minutes count only while all of it is in contact with what treats it. */
    static boolean contact(String step) {
        return step.equals("soak") || step.equals("freeze");
    }

    Optional<Lane> lane(SetSpan span) {
        return ledger.lane(span.kitSet());
    }

    /** The cleaning that the span belongs to, planned or on record. */
    Optional<Treated> treated(SetSpan span) {
        return lane(span).flatMap(lane -> SetLanes.treated(lane, span));
    }

    /** The planned cleaning that the span belongs to; empty where it is one on record that nobody planned. */
    Optional<DeconTask> task(SetSpan span) {
        return treated(span).flatMap(treated -> task(span.kitSet(), treated.start()));
    }

    private Optional<DeconTask> task(String kitSet, Instant start) {
        return week.decon().stream()
                .filter(task -> task.kitSet().equals(kitSet) && task.start().equals(start))
                .findFirst();
    }

    /** The same cleaning on the bench, which may begin later. */
    Optional<BenchTask> bench(DeconTask task) {
        return baths.bench().tasks().stream()
                .filter(one -> one.kitSet().equals(task.kitSet()) && one.asked().equals(task.start()))
                .findFirst();
    }
}
