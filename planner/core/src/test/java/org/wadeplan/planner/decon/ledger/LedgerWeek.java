package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.week.Progress;

/** The agreed week of the troubled demo round with its ledger, whole or changed in one place. */
final class LedgerWeek {

    static final Round ROUND = DemoRound.troubled();
    static final ExposureLedger LEDGER = ledger(ROUND);

    private LedgerWeek() {}

    static ExposureLedger ledger(Round round) {
        RoundPlan plan = RoundPlanner.inForce(round, PlanOptions.usual(), Progress.NONE);
        return ExposureLedger.of(round, plan.week(), plan.kit());
    }

    static Round agreed(UnaryOperator<AgreedTask> change) {
        List<AgreedTask> tasks = ROUND.log().agreed().stream().map(change).toList();
        return ROUND.with(new FieldLog(tasks, List.of(), List.of(), List.of()));
    }

    static Round without(String kitSet, String cleanedAt) {
        List<AgreedTask> tasks = ROUND.log().agreed().stream()
                .filter(task -> !(task.cleaning()
                        && task.kitSets().contains(kitSet)
                        && task.start().equals(Instant.parse(cleanedAt))))
                .toList();
        return ROUND.with(new FieldLog(tasks, List.of(), List.of(), List.of()));
    }

    /** The round with a kit set that was in a water last week and not cleaned. */
    static Round exposedBefore(String kitSet, String water) {
        Store store = ROUND.store();
        List<KitSet> sets = new ArrayList<>();
        for (KitSet set : store.kitSets()) {
            sets.add(
                    set.id().equals(kitSet)
                            ? new KitSet(
                                    set.id(),
                                    set.purpose(),
                                    set.materials(),
                                    set.state(),
                                    List.of(water),
                                    Optional.of(Instant.parse("2027-09-03T10:00:00Z")),
                                    set.note())
                            : set);
        }
        return ROUND.with(new Store(sets, store.items(), store.needs(), store.packSeconds(), store.voltageCeilings()));
    }

    static Lane lane(ExposureLedger ledger, String id) {
        return ledger.lane(id).orElseThrow();
    }

    static Round recorded(CleaningRecord record) {
        FieldLog log = ROUND.log();
        return ROUND.with(new FieldLog(log.agreed(), log.baths(), List.of(record), log.ticks()));
    }

    /** K1 treated for an hour on Monday, dry at 02:30 the next morning. */
    static CleaningRecord record(String treatment, TreatmentMode mode, Optional<String> override) {
        return new CleaningRecord(
                "C-1",
                "K1",
                treatment,
                mode,
                Optional.empty(),
                Instant.parse("2027-09-06T16:00:00Z"),
                Instant.parse("2027-09-06T17:00:00Z"),
                OptionalDouble.of(63),
                OptionalDouble.of(61),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                true,
                true,
                Optional.of(Instant.parse("2027-09-07T02:30:00Z")),
                "imre",
                Optional.of("yusra"),
                override,
                override.map(by -> "no other set left"),
                Optional.empty());
    }
}
