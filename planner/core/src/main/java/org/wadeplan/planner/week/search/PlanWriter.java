package org.wadeplan.planner.week.search;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Placement;
import org.wadeplan.planner.week.TimeWindow;
import org.wadeplan.planner.week.Travel;
import org.wadeplan.planner.week.Unplaced;
import org.wadeplan.planner.week.WeekPlan;

/** Writes a searched week out as a plan that a person reads. */
final class PlanWriter {

    private final WeekModel model;
    private final WeekEvaluator evaluator;
    private final WeekState state;
    private final Travel travel;

    PlanWriter(WeekModel model, WeekEvaluator evaluator, WeekState state) {
        this.model = model;
        this.evaluator = evaluator;
        this.state = state;
        this.travel = new Travel(model.round());
    }

    static WeekPlan withoutCrews(WeekModel model) {
        List<Unplaced> unplaced = new ArrayList<>(model.never());
        for (Job job : model.jobs()) {
            String method = job.stops().get(0).method();
            unplaced.add(
                    new Unplaced(job.site().id(), method, List.of("No crew is rostered on any day of the round.")));
        }
        return new WeekPlan(List.of(), List.of(), List.of(), unplaced, List.of(), List.of());
    }

    WeekPlan write(boolean stoppedEarly) {
        Score score = evaluator.scoreAndLog(state).orElseThrow();
        List<DayLog.Entry> entries = List.copyOf(evaluator.log().entries());
        List<DayLog.Cleaning> cleanings = List.copyOf(evaluator.log().cleanings());
        List<CrewDay> days = new ArrayList<>();
        Set<String> estimated = new TreeSet<>();
        for (Slot slot : model.slots()) {
            List<Activity> activities = activities(slot, entries, estimated);
            if (!activities.isEmpty()) {
                var roster = slot.roster();
                days.add(new CrewDay(roster.crew(), roster.date(), roster.people(), roster.vehicle(), activities));
            }
        }
        List<String> words = new ArrayList<>(score.words());
        if (stoppedEarly) {
            words.add("The search was stopped before its budget was used up.");
        }
        List<Unplaced> unplaced = new ArrayList<>(model.never());
        unplaced.addAll(new UnplacedReasons(model, evaluator, state).all());
        return new WeekPlan(
                days, decon(cleanings), placements(entries), List.copyOf(unplaced), List.copyOf(estimated), words);
    }

    private List<Activity> activities(Slot slot, List<DayLog.Entry> entries, Set<String> estimated) {
        List<Activity> activities = new ArrayList<>();
        String from = model.places().get(model.depot());
        for (DayLog.Entry entry : entries) {
            if (entry.slot() == slot.index()) {
                String note = entry.note();
                if (entry.kind() == ActivityKind.TRAVEL) {
                    Travel.Drive drive = travel.between(from, model.places().get(entry.place()));
                    note = drive.words();
                    if (drive.estimated()) {
                        estimated.add(note);
                    }
                }
                activities.add(entry.stop() >= 0 ? visit(entry) : other(entry, note));
                from = model.places().get(entry.place());
            }
        }
        return List.copyOf(activities);
    }

    private Activity visit(DayLog.Entry entry) {
        Stop stop = model.stops().get(entry.stop());
        Job job = model.jobs().get(stop.job());
        return new Activity(
                ActivityKind.VISIT,
                at(entry.start()),
                at(entry.end()),
                stop.site().id(),
                Optional.of(stop.site().id()),
                Optional.of(stop.part().part()),
                Optional.of(stop.method()),
                setNames(entry.sets()),
                Optional.of(at(entry.start() + stop.p50Min())),
                job.note());
    }

    private Activity other(DayLog.Entry entry, String note) {
        return new Activity(
                entry.kind(),
                at(entry.start()),
                at(entry.end()),
                model.places().get(entry.place()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                setNames(entry.sets()),
                Optional.empty(),
                note);
    }

    private List<String> setNames(List<Integer> sets) {
        return sets.stream().map(model.kitSets()::get).map(KitSet::id).toList();
    }

    private Instant at(int minute) {
        return model.axis().instant(minute);
    }

    private List<DeconTask> decon(List<DayLog.Cleaning> cleanings) {
        return cleanings.stream()
                .map(one -> {
                    SetTreatment treatment = model.treatments()[one.set()][one.dirtyFrom()];
                    return new DeconTask(
                            model.kitSets().get(one.set()).id(),
                            model.slots().get(one.slot()).roster().crew(),
                            treatment.fromWaters(),
                            at(one.start()),
                            at(one.crewFree()),
                            at(one.released()),
                            treatment.steps(),
                            treatment.covers(),
                            treatment.reason());
                })
                .sorted(Comparator.comparing(DeconTask::start).thenComparing(DeconTask::kitSet))
                .toList();
    }

    private List<Placement> placements(List<DayLog.Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.stop() >= 0)
                .map(this::placement)
                .toList();
    }

    private Placement placement(DayLog.Entry entry) {
        Stop stop = model.stops().get(entry.stop());
        int date = model.slots().get(entry.slot()).dateIndex();
        TimeWindow window = stop.windows().get(date).fitting().stream()
                .filter(one -> model.axis().minute(one.opens()) <= entry.start()
                        && model.axis().minute(one.closes()) >= entry.end())
                .findFirst()
                .orElseThrow();
        String note = model.jobs().get(stop.job()).note();
        String binding = "from: " + window.opensBecause() + "; until: " + window.closesBecause()
                + (note.isEmpty() ? "" : "; " + note);
        return new Placement(
                stop.site().id(),
                stop.part().part(),
                Optional.of(window.opens()),
                Optional.of(window.closes()),
                binding,
                model.axis().minute(window.closes()) - entry.end());
    }
}
