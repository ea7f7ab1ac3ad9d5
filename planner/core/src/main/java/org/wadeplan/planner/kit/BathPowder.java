package org.wadeplan.planner.kit;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Dilution;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * What the week's baths use up: a bath for each tub in use on a day, because a used bath is tipped out after the day.
 */
final class BathPowder {

    private BathPowder() {}

    /**
     * What one tub or more take on a day.
     *
     * @param crew who makes it up
     * @param kind the store's word for what goes into it
     */
    record Bath(LocalDate date, String crew, String tub, String kind, double quantityKg) {}

    static List<Bath> baths(Round round, WeekPlan week) {
        List<Bath> baths = new ArrayList<>();
        for (DeconResource tub : round.biosecurity().resources()) {
            Optional<String> kind = tub.agent().flatMap(agent -> kind(round, agent));
            if (kind.isPresent()
                    && tub.volumeL().isPresent()
                    && tub.strengthGL().isPresent()) {
                double kg = Dilution.powderKg(
                        tub.volumeL().getAsDouble(), tub.strengthGL().getAsDouble());
                byDate(week, tub)
                        .forEach((date, that) -> baths.add(new Bath(
                                date, that.get(0).crew(), tub.label(), kind.get(), kg * mostAtATime(that, tub))));
            }
        }
        return List.copyOf(baths);
    }

    private static SortedMap<LocalDate, List<DeconTask>> byDate(WeekPlan week, DeconResource tub) {
        return week.decon().stream()
                .filter(task -> soak(task, tub).isPresent())
                .sorted(Comparator.comparing(DeconTask::start).thenComparing(DeconTask::kitSet))
                .collect(Collectors.groupingBy(task -> workingDay(week, task), TreeMap::new, Collectors.toList()));
    }

    /** The crew-day that the task belongs to, which may have begun before midnight. */
    private static LocalDate workingDay(WeekPlan week, DeconTask task) {
        return week.crewDays().stream()
                .filter(day -> day.crew().equals(task.crew()) && !day.start().isAfter(task.start()))
                .map(CrewDay::date)
                .max(LocalDate::compareTo)
                .orElseGet(() -> task.start().atZone(ZoneOffset.UTC).toLocalDate());
    }

    /** How many kit sets lie in the tubs at once: each has a tub of its own, and a tub is made up once a day. */
    private static int mostAtATime(List<DeconTask> tasks, DeconResource tub) {
        List<Soak> soaks =
                tasks.stream().flatMap(task -> soak(task, tub).stream()).toList();
        return soaks.stream()
                .mapToInt(soak -> (int) soaks.stream()
                        .filter(other -> !other.from().isAfter(soak.from())
                                && other.until().isAfter(soak.from()))
                        .count())
                .max()
                .orElse(0);
    }

    private record Soak(Instant from, Instant until) {}

    private static Optional<Soak> soak(DeconTask task, DeconResource tub) {
        Instant start = task.start();
        for (DeconStep step : task.steps()) {
            Instant end = start.plus(Duration.ofMinutes(step.minutes()));
            if (step.step().equals("soak")
                    && step.resource().filter(tub.id()::equals).isPresent()) {
                return Optional.of(new Soak(start, end));
            }
            start = end;
        }
        return Optional.empty();
    }

    /**
     * The store's kind whose word the agent's name holds, or the agent itself where the store has none; nothing where the
     * methods' kit needs count it already.
     */
    private static Optional<String> kind(Round round, String agent) {
        String lower = agent.toLowerCase(Locale.ROOT);
        String kind = round.store().items().stream()
                .map(StoreItem::kind)
                .filter(word -> lower.contains(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElse(agent);
        boolean counted =
                round.store().needs().stream().anyMatch(need -> need.kind().equals(kind));
        return counted ? Optional.empty() : Optional.of(kind);
    }
}
