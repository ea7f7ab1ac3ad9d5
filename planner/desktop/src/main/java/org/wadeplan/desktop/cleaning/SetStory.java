package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** What happens to one kit set along the week, as an unbroken row of spans. */
final class SetStory {

    private final Round round;
    private final WeekPlan week;
    private final KitSet set;
    private final SpanFacts facts;
    private final List<SetSpan> spans = new ArrayList<>();
    private final TreeSet<String> touched = new TreeSet<>();
    private Instant at = Instant.MIN;
    private SetState resting = SetState.CLEAN_DRY;
    private Optional<DeconTask> lastClean = Optional.empty();
    private Instant released = Instant.MIN;

    SetStory(Round round, WeekPlan week, KitSet set, Optional<String> flag) {
        this.round = round;
        this.week = week;
        this.set = set;
        this.facts = new SpanFacts(round, week, set, flag);
    }

    private record Use(CrewDay day, Activity visit) {}

    /** Either a use or a cleaning, by its start. */
    private record Event(Instant start, Optional<Use> use, Optional<DeconTask> clean) {}

    List<SetSpan> spans(Instant from, Instant to) {
        at = from;
        resting = atStart(set.state());
        touched.addAll(set.exposedTo());
        for (Event event : events()) {
            if (set.state() != StoreState.OUT_OF_SERVICE) {
                rest(event.start());
                event.use().ifPresent(this::use);
                event.clean().ifPresent(this::clean);
            }
        }
        rest(to);
        return List.copyOf(spans);
    }

    private static SetState atStart(StoreState state) {
        return switch (state) {
            case CLEAN_DRY -> SetState.CLEAN_DRY;
            case DRYING -> SetState.DRYING;
            case OUT_OF_SERVICE -> SetState.OUT_OF_SERVICE;
            case WET, DIRTY -> SetState.DIRTY;
        };
    }

    private List<Event> events() {
        List<Event> events = new ArrayList<>();
        for (CrewDay day : week.crewDays()) {
            day.visits().stream()
                    .filter(visit -> visit.kitSets().contains(set.id()))
                    .forEach(visit ->
                            events.add(new Event(visit.start(), Optional.of(new Use(day, visit)), Optional.empty())));
        }
        week.decon().stream()
                .filter(task -> task.kitSet().equals(set.id()))
                .forEach(task -> events.add(new Event(task.start(), Optional.empty(), Optional.of(task))));
        events.sort(Comparator.comparing(Event::start));
        return events;
    }

    /** It stays as it is until something happens. */
    private void rest(Instant until) {
        if (until.isAfter(at)) {
            List<Fact> why = facts.resting(resting, at, List.copyOf(touched), lastClean);
            add(resting, at, until, lastClean, why);
        }
    }

    private void use(Use use) {
        boolean early = use.visit().start().isBefore(released);
        List<String> before = List.copyOf(touched);
        String water = use.visit()
                .site()
                .flatMap(round::site)
                .flatMap(round::waterOf)
                .map(found -> found.id())
                .orElse(use.visit().place());
        Instant start = use.visit().start().isBefore(at) ? at : use.visit().start();
        Optional<Instant> due = early ? Optional.of(released) : Optional.empty();
        if (use.visit().end().isAfter(start)) {
            spans.add(facts.span(
                    SetState.IN_USE,
                    start,
                    use.visit().end(),
                    List.of(water),
                    use.visit().site(),
                    Optional.empty(),
                    facts.use(use.day(), use.visit(), water, before, due)));
            at = use.visit().end();
        }
        touched.add(water);
        resting = SetState.DIRTY;
        lastClean = Optional.empty();
    }

    private void clean(DeconTask task) {
        Optional<DeconTask> its = Optional.of(task);
        if (task.crewFree().isAfter(at)) {
            Instant start = at.isAfter(task.start()) ? at : task.start();
            add(SetState.TREATING, start, task.crewFree(), its, facts.cleaning(task));
        }
        if (task.released().isAfter(at)) {
            add(SetState.DRYING, at, task.released(), its, facts.drying(task));
        }
        released = task.released();
        resting = SetState.RELEASED;
        lastClean = its;
        touched.clear();
    }

    private void add(SetState state, Instant from, Instant to, Optional<DeconTask> task, List<Fact> why) {
        Optional<String> id = task.map(CleaningTasks::id);
        spans.add(facts.span(state, from, to, List.copyOf(touched), Optional.empty(), id, why));
        at = to;
    }
}
