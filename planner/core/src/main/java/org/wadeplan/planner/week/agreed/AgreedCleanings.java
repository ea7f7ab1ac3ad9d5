package org.wadeplan.planner.week.agreed;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.DeconTask;

/** Works out what each agreed cleaning has to be: against all that the kit set touched since it was last clean. */
final class AgreedCleanings {

    private static final Comparator<AgreedTask> BY_START =
            Comparator.comparing(AgreedTask::start).thenComparing(AgreedTask::crew);

    private final Round round;
    private final TransferRules rules;
    private final List<AgreedVisit> visits;
    private final List<Problem> findings;

    AgreedCleanings(Round round, List<AgreedVisit> visits, List<Problem> findings) {
        this.round = round;
        this.rules = new TransferRules(round);
        this.visits = visits;
        this.findings = findings;
    }

    /** By start, then kit set. */
    List<DeconTask> of(List<AgreedTask> tasks) {
        List<DeconTask> cleanings = new ArrayList<>();
        for (KitSet set : round.store().kitSets()) {
            Optional<Instant> cleanedAt = Optional.empty();
            for (AgreedTask task : tasks.stream().sorted(BY_START).toList()) {
                if (task.cleaning() && task.kitSets().contains(set.id())) {
                    Optional<DeconTask> cleaning = cleaning(set, task, cleanedAt);
                    cleaning.ifPresentOrElse(cleanings::add, () -> findings.add(nothingToClean(set, task)));
                    cleanedAt = Optional.of(task.start());
                }
            }
        }
        cleanings.sort(Comparator.comparing(DeconTask::start).thenComparing(DeconTask::kitSet));
        return List.copyOf(cleanings);
    }

    private Optional<DeconTask> cleaning(KitSet set, AgreedTask task, Optional<Instant> cleanedAt) {
        NavigableSet<String> touched = touched(set, cleanedAt, task.start());
        if (touched.isEmpty()) {
            return Optional.empty();
        }
        Turnaround needed = rules.needed(set, touched, nextWater(set, touched, task.start()));
        return Optional.of(new DeconTask(
                set.id(),
                task.crew(),
                List.copyOf(touched),
                task.start(),
                after(
                        task.start(),
                        needed.steps().stream().filter(DeconStep::crewBusy).toList()),
                after(task.start(), needed.steps()),
                needed.steps(),
                needed.covers(),
                needed.reason()));
    }

    private static Instant after(Instant start, List<DeconStep> steps) {
        return start.plus(
                Duration.ofMinutes(steps.stream().mapToInt(DeconStep::minutes).sum()));
    }

    private NavigableSet<String> touched(KitSet set, Optional<Instant> since, Instant until) {
        NavigableSet<String> waters = new TreeSet<>(since.isEmpty() ? set.exposedTo() : List.of());
        for (AgreedVisit visit : visits) {
            boolean after = since.filter(time -> visit.start().isBefore(time)).isEmpty();
            if (visit.kitSets().contains(set.id()) && after && visit.start().isBefore(until)) {
                round.waterOf(visit.site()).map(Water::id).ifPresent(waters::add);
            }
        }
        return waters;
    }

    /**
     * The water that the set goes to next. A set that goes back to the one water it was in, or nowhere, is cleaned for any
     * other water that is not protected, so that an agreed cleaning is always a whole one.
     */
    private String nextWater(KitSet set, NavigableSet<String> touched, Instant from) {
        boolean oneWater = touched.size() == 1;
        return visits.stream()
                .filter(visit ->
                        visit.kitSets().contains(set.id()) && !visit.start().isBefore(from))
                .flatMap(visit -> round.waterOf(visit.site()).stream())
                .findFirst()
                .filter(water -> !(oneWater && touched.contains(water.id())))
                .or(() -> anyOther(touched))
                .map(Water::id)
                .orElse(touched.first());
    }

    private Optional<Water> anyOther(NavigableSet<String> touched) {
        return round.waters().stream()
                .filter(water -> !touched.contains(water.id()))
                .min(Comparator.comparing(Water::protectedWater));
    }

    private static Problem nothingToClean(KitSet set, AgreedTask task) {
        return Problem.error(
                "agreed-cleaning-of-clean",
                AgreedWeek.place(task),
                set.id()
                        + " touched no water on file since it was last clean, so what this cleaning is against is not known",
                "a cleaning after a visit",
                "name the visit before it, or what the set touched before the round in kit_sets.csv; until then this line is"
                        + " left out of the week");
    }
}
