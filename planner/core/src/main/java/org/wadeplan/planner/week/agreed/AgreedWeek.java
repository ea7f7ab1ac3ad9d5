package org.wadeplan.planner.week.agreed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Unplaced;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;

/**
 * Brings the week as people agreed it into the form of a plan: each visit at its stated start for its P80 minutes, with the
 * loading, drives, rinses and waits between, and each cleaning with the steps that the evidence asks for. Everything is placed
 * where it was agreed, rules or no rules; {@code week.verify} says what breaks.
 */
public final class AgreedWeek {

    private static final Comparator<CrewDayKey> BY_DATE =
            Comparator.comparing(CrewDayKey::date).thenComparing(CrewDayKey::crew);

    private final WeekInputs inputs;
    private final Round round;
    private final List<AgreedTask> tasks;
    private final List<Problem> findings = new ArrayList<>();

    private record CrewDayKey(LocalDate date, String crew) {

        String name() {
            return "crew " + crew + " " + date;
        }
    }

    /**
     * The week, and what cannot be as agreed.
     *
     * @param findings times that cannot be kept and lines that cannot be placed, all of them, worst first
     */
    public record Laid(WeekPlan week, List<Problem> findings) {}

    private AgreedWeek(WeekInputs inputs, List<AgreedTask> tasks) {
        this.inputs = inputs;
        this.round = inputs.round();
        this.tasks = tasks;
    }

    /** The week alone; {@link #lay} says besides what cannot be as agreed. */
    public static WeekPlan of(WeekInputs inputs, List<AgreedTask> tasks) {
        return lay(inputs, tasks).week();
    }

    /** The agreed week as a plan. Searches nothing; the same lines give the same plan. */
    public static Laid lay(WeekInputs inputs, List<AgreedTask> tasks) {
        return new AgreedWeek(inputs, tasks).laid();
    }

    /** Where a line of the agreed week stands, by what it says. */
    static SourcePlace place(AgreedTask task) {
        String what = task.site().orElse("cleaning of " + String.join(", ", task.kitSets()))
                + task.part().map(part -> " " + part.word()).orElse("");
        return SourcePlace.part("agreed_week.csv", "crew " + task.crew() + " " + task.date() + ", " + what);
    }

    private Laid laid() {
        List<AgreedVisit> visits = new AgreedVisits(inputs, findings).of(tasks);
        List<DeconTask> cleanings = new AgreedCleanings(round, visits, findings).of(tasks);
        tasks.stream().filter(this::onAnotherDay).map(this::wrongDate).forEach(findings::add);
        List<CrewDay> days = new ArrayList<>();
        Set<String> estimated = new LinkedHashSet<>();
        crewDays().forEach((key, own) -> day(key, own, visits, cleanings, estimated)
                .ifPresent(days::add));
        WeekPlan week = new WeekPlan(
                List.copyOf(days),
                cleanings,
                new AgreedPlacements(round).of(visits),
                unplaced(visits),
                List.copyOf(estimated),
                List.of("The week as agreed, " + tasks.size() + " lines of agreed_week.csv; nothing was searched."));
        return new Laid(week, findings.stream().sorted(Problem.WORST_FIRST).toList());
    }

    private Map<CrewDayKey, List<AgreedTask>> crewDays() {
        Map<CrewDayKey, List<AgreedTask>> days = new TreeMap<>(BY_DATE);
        for (AgreedTask task : tasks) {
            days.computeIfAbsent(new CrewDayKey(task.date(), task.crew()), key -> new ArrayList<>())
                    .add(task);
        }
        return days;
    }

    private Optional<CrewDay> day(
            CrewDayKey key,
            List<AgreedTask> own,
            List<AgreedVisit> visits,
            List<DeconTask> cleanings,
            Set<String> estimated) {
        List<AgreedVisit> ownVisits =
                visits.stream().filter(visit -> own.contains(visit.task())).toList();
        List<DeconTask> ownCleanings = cleanings.stream()
                .filter(cleaning -> own.stream().anyMatch(task -> isOf(task, cleaning)))
                .toList();
        if (ownVisits.isEmpty() && ownCleanings.isEmpty()) {
            return Optional.empty();
        }
        AgreedDay.Laid day = AgreedDay.of(round, key.name(), ownVisits, ownCleanings, findings);
        estimated.addAll(day.estimatedLegs());
        Optional<CrewDayRoster> roster = roster(key);
        if (roster.isEmpty()) {
            findings.add(notInRoster(key));
        }
        return Optional.of(new CrewDay(
                key.crew(),
                key.date(),
                roster.map(CrewDayRoster::people).orElse(List.of()),
                roster.map(CrewDayRoster::vehicle).orElse("no vehicle"),
                day.activities()));
    }

    private static boolean isOf(AgreedTask task, DeconTask cleaning) {
        return task.cleaning()
                && task.crew().equals(cleaning.crew())
                && task.start().equals(cleaning.start())
                && task.kitSets().contains(cleaning.kitSet());
    }

    private Optional<CrewDayRoster> roster(CrewDayKey key) {
        return round.roster().stream()
                .filter(line -> line.date().equals(key.date()) && line.crew().equals(key.crew()))
                .findFirst();
    }

    private static Problem notInRoster(CrewDayKey key) {
        return Problem.error(
                "agreed-without-roster",
                SourcePlace.part("agreed_week.csv", key.name()),
                "crew_days.csv has no line for it, so who goes and with which vehicle is not known",
                "a line for every crew-day",
                "add the line to crew_days.csv, or correct the date or the crew");
    }

    /** A crew-day may run past midnight, not into the day after. */
    private boolean onAnotherDay(AgreedTask task) {
        LocalDate starts = task.start().atZone(round.header().zone()).toLocalDate();
        return !starts.equals(task.date()) && !starts.equals(task.date().plusDays(1));
    }

    private Problem wrongDate(AgreedTask task) {
        return Problem.error(
                "agreed-on-another-day",
                place(task),
                "it starts on " + task.start().atZone(round.header().zone()).toLocalDate() + " and belongs to the day "
                        + task.date(),
                "a start on that day, or in the night after it",
                "correct the date or the start");
    }

    private List<Unplaced> unplaced(List<AgreedVisit> visits) {
        Set<String> visited =
                visits.stream().map(visit -> visit.site().id()).collect(Collectors.toCollection(TreeSet::new));
        List<Unplaced> unplaced = new ArrayList<>();
        for (Site site : round.sites()) {
            if (site.reserveFor().isEmpty() && !visited.contains(site.id())) {
                unplaced.add(new Unplaced(site.id(), method(site), List.of(whyNot(site, visited))));
            }
        }
        return List.copyOf(unplaced);
    }

    private String method(Site site) {
        return inputs.decision(site.id())
                .flatMap(decision -> decision.chosen())
                .map(MethodOutcome.Chosen::method)
                .orElse("not decided");
    }

    private String whyNot(Site site, Set<String> visited) {
        return round.sites().stream()
                .filter(reserve ->
                        reserve.reserveFor().filter(site.id()::equals).isPresent())
                .filter(reserve -> visited.contains(reserve.id()))
                .findFirst()
                .map(reserve -> "The agreed week visits " + reserve.id() + " in its place.")
                .orElse("The agreed week has no line for it.");
    }
}
