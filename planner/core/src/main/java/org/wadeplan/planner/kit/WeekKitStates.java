package org.wadeplan.planner.kit;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * Kit sets by the week in force and by what was recorded: a set is dirty from a use on until a cleaning after it is done and
 * dry. A recorded cleaning counts before the planned one; without a record the plan's own release counts, and says so.
 */
public final class WeekKitStates implements KitStates {

    private final Round round;
    private final WeekPlan week;
    private final ZoneId zone;

    public WeekKitStates(Round round, WeekPlan week) {
        this.round = round;
        this.week = week;
        this.zone = round.header().zone();
    }

    @Override
    public Optional<String> against(KitSet set, Instant at) {
        if (set.state() == StoreState.OUT_OF_SERVICE) {
            return Optional.of(set.id() + " is out of service");
        }
        Optional<Activity> use = lastUse(set, at);
        return use.isEmpty() ? atStart(set, at) : afterUse(set, use.get(), at);
    }

    @Override
    public Optional<String> restsOn(KitSet set, Instant at) {
        return lastUse(set, at).map(use -> recorded(set, use.end())
                .map(record -> "cleaning " + record.id() + ", recorded by " + record.operator())
                .orElse("the plan: nobody recorded the cleaning of " + set.id() + " after " + use.place()));
    }

    private Optional<Activity> lastUse(KitSet set, Instant at) {
        return week.crewDays().stream()
                .flatMap(day -> day.visits().stream())
                .filter(visit ->
                        visit.kitSets().contains(set.id()) && visit.start().isBefore(at))
                .max(Comparator.comparing(Activity::start));
    }

    private Optional<String> atStart(KitSet set, Instant at) {
        Optional<CleaningRecord> record = recorded(set, Instant.MIN);
        if (record.isPresent()) {
            return dry(set, record.get(), at);
        }
        if (set.state() != StoreState.CLEAN_DRY) {
            return Optional.of(set.id() + " starts the round "
                    + set.state().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        return set.exposedTo().isEmpty()
                ? Optional.empty()
                : Optional.of(set.id() + " was in " + String.join(", ", set.exposedTo())
                        + " before the round and no cleaning is on file");
    }

    private Optional<String> afterUse(KitSet set, Activity use, Instant at) {
        if (use.end().isAfter(at)) {
            return Optional.of(set.id() + " is in use at " + use.place() + " until " + clock(use.end()));
        }
        Optional<CleaningRecord> record = recorded(set, use.end());
        if (record.isPresent()) {
            return dry(set, record.get(), at);
        }
        Optional<DeconTask> task = week.decon().stream()
                .filter(one -> one.kitSet().equals(set.id()) && !one.start().isBefore(use.end()))
                .min(Comparator.comparing(DeconTask::start));
        String touched = set.id() + " was in the water at " + use.place() + " until " + clock(use.end());
        if (task.isEmpty()) {
            return Optional.of(touched + " and no cleaning follows it");
        }
        return task.get().released().isAfter(at)
                ? Optional.of(touched + ", is cleaned from " + clock(task.get().start()) + " and released at "
                        + clock(task.get().released()))
                : Optional.empty();
    }

    private Optional<CleaningRecord> recorded(KitSet set, Instant after) {
        List<CleaningRecord> all = round.log().cleanings().stream()
                .filter(one -> one.kitSet().equals(set.id()) && !one.startedAt().isBefore(after))
                .toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    private Optional<String> dry(KitSet set, CleaningRecord record, Instant at) {
        Optional<Instant> dryAt = record.dryAt();
        if (dryAt.isEmpty()) {
            return Optional.of(set.id() + ": cleaning " + record.id() + " is recorded, and not when it was dry");
        }
        return dryAt.get().isAfter(at)
                ? Optional.of(set.id() + ": by cleaning " + record.id() + " it is dry at " + clock(dryAt.get()))
                : Optional.empty();
    }

    private String clock(Instant time) {
        return KitWords.moment(time, zone);
    }
}
