package org.wadeplan.planner.kit;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * The reference week of the Ilvermoor scenario, section 4.8, with its own times: made by hand, for checks of what comes after
 * the schedule. The scenario's kit-set lanes are filled in where it leaves them open. It places nothing and scores nothing.
 */
public final class ReferenceWeek {

    private final Round round;
    private final List<CrewDay> crewDays = new ArrayList<>();
    private final List<DeconTask> decon = new ArrayList<>();

    private ReferenceWeek(Round round) {
        this.round = round;
    }

    /** The week for one of the two demo rounds. */
    public static WeekPlan of(Round round) {
        ReferenceWeek week = new ReferenceWeek(round);
        week.crewA();
        week.crewB();
        return new WeekPlan(
                week.crewDays.stream()
                        .sorted(Comparator.comparing(CrewDay::date).thenComparing(CrewDay::crew))
                        .toList(),
                week.decon.stream()
                        .sorted(Comparator.comparing(DeconTask::start))
                        .toList(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private void crewA() {
        day("A", 0, "07:30")
                .load("08:00")
                .travel("08:30", "BRN-01")
                .visit("13:30", VisitPart.SURVEY, "EFISH", "K1")
                .rinse("13:45")
                .travel("13:55", "BRN-03")
                .visit("15:10", VisitPart.SET, "TRAP", "K1", "T1")
                .travel("15:50", "DEPOT")
                .clean("16:50", "BRN", "K1")
                .end();
        day("A", 1, "06:30")
                .load("06:45")
                .travel("07:25", "BRN-03")
                .visit("09:20", VisitPart.LIFT, "TRAP", "K1", "T1")
                .rinse("09:35")
                .travel("09:50", "BRN-02")
                .visit("15:35", VisitPart.SURVEY, "EFISH", "K1")
                .travel("16:05", "DEPOT")
                .clean("17:05", "BRN", "K1", "T1")
                .end();
        day("A", 2, "07:30")
                .load("08:00")
                .travel("08:20", "OUN-01")
                .visit("13:40", VisitPart.SURVEY, "EFISH", "K2")
                .rinse("13:55")
                .travel("14:15", "DEPOT")
                .clean("15:15", "OUN-U", "K2")
                .clean("16:15", "HSK", "K3")
                .end();
        day("A", 3, "07:30")
                .load("08:00")
                .travel("08:20", "OUN-02B")
                .visit("14:30", VisitPart.SURVEY, "EFISH", "K1")
                .rinse("14:45")
                .travel("15:05", "DEPOT")
                .clean("16:05", "OUN-U", "K1")
                .end();
        day("A", 4, "07:30")
                .load("08:00")
                .travel("08:30", "OUN-03")
                .visit("14:55", VisitPart.SURVEY, "EFISH", "K2")
                .rinse("15:10")
                .travel("15:40", "DEPOT")
                .clean("16:40", "OUN-L", "K2")
                .end();
    }

    private void crewB() {
        day("B", 0, "12:00")
                .load("12:30")
                .travel("13:05", "HSK-01")
                .visit("17:50", VisitPart.SURVEY, "EFISH", "K3")
                .rinse("18:05")
                .travel("18:15", "HSK-02")
                .visit("18:45", VisitPart.MARK, "SPOT", "K3")
                .waitFor("20:35")
                .visit("21:55", VisitPart.NIGHT, "SPOT", "K3")
                .travel("22:40", "DEPOT")
                .unload("22:55")
                .end();
        day("B", 1, "10:00")
                .load("10:30")
                .travel("11:05", "TOL-02")
                .visit("11:45", VisitPart.DRY_CHECK, "RECORD_DRY", "K4")
                .travel("11:55", "TOL-01")
                .visit("17:05", VisitPart.SURVEY, "EFISH", "K4")
                .rinse("17:20")
                .travel("17:50", "DEPOT")
                .clean("19:20", "TOL", "K4")
                .end();
        day("B", 2, "06:50")
                .load("07:05")
                .travel("07:30", "TOL-03")
                .visit("12:55", VisitPart.SURVEY, "EFISH_AM", "K4")
                .rinse("13:10")
                .travel("13:35", "DEPOT")
                .clean("15:05", "TOL", "K4")
                .load("15:30")
                .travel("16:00", "PEL-01")
                .visit("17:05", VisitPart.SET, "TRAP", "K5", "T2")
                .rinse("17:15")
                .travel("17:45", "DEPOT")
                .end();
        day("B", 3, "05:20")
                .load("05:35")
                .travel("06:05", "PEL-01")
                .visit("08:10", VisitPart.LIFT, "TRAP", "K5", "T2")
                .rinse("08:25")
                .travel("08:55", "DEPOT")
                .clean("10:10", "PEL", "K5", "T2")
                .waitFor("16:20")
                .end();
        day("B", 4, "13:00")
                .waitFor("17:00")
                .travel("17:30", "PEL-02")
                .visit("18:00", VisitPart.MARK, "SPOT", "K5")
                .waitFor("20:27")
                .visit("21:27", VisitPart.NIGHT, "SPOT", "K5")
                .travel("21:57", "DEPOT")
                .clean("23:12", "PEL", "K5")
                .end();
    }

    private Day day(String crew, int fromMonday, String start) {
        return new Day(crew, round.header().firstDay().plusDays(fromMonday), start);
    }

    /** A crew-day written down as what is done until when. */
    private final class Day {
        private final String crew;
        private final LocalDate date;
        private final List<Activity> activities = new ArrayList<>();
        private Instant at;
        private String place = "DEPOT";

        private Day(String crew, LocalDate date, String start) {
            this.crew = crew;
            this.date = date;
            this.at = instant(start);
        }

        private Day load(String until) {
            return add(ActivityKind.LOAD, until, List.of());
        }

        private Day unload(String until) {
            return add(ActivityKind.UNLOAD, until, List.of());
        }

        private Day rinse(String until) {
            return add(ActivityKind.RINSE, until, List.of());
        }

        private Day waitFor(String until) {
            return add(ActivityKind.WAIT, until, List.of());
        }

        private Day travel(String until, String to) {
            place = to;
            return add(ActivityKind.TRAVEL, until, List.of());
        }

        private Day visit(String until, VisitPart part, String method, String... kitSets) {
            return add(ActivityKind.VISIT, until, Optional.of(part), Optional.of(method), List.of(kitSets));
        }

        /** Cleans the sets side by side, by the steps of the turnaround into another water. */
        private Day clean(String until, String from, String... kitSets) {
            TransferRules rules = new TransferRules(round);
            for (String id : kitSets) {
                Turnaround turnaround = rules.needed(
                        round.store().kitSet(id).orElseThrow(), List.of(from), from.equals("BRN") ? "TOL" : "BRN");
                Instant free = at.plus(Duration.ofMinutes(turnaround.crewMin()));
                decon.add(new DeconTask(
                        id,
                        crew,
                        List.of(from),
                        at,
                        free,
                        free.plus(Duration.ofMinutes(turnaround.unattendedMin())),
                        turnaround.steps(),
                        turnaround.covers(),
                        turnaround.reason()));
            }
            return add(ActivityKind.DECON, until, List.of(kitSets));
        }

        private Day add(ActivityKind kind, String until, List<String> kitSets) {
            return add(kind, until, Optional.empty(), Optional.empty(), kitSets);
        }

        private Day add(
                ActivityKind kind,
                String until,
                Optional<VisitPart> part,
                Optional<String> method,
                List<String> kitSets) {
            Optional<String> site = part.map(that -> place);
            Instant end = instant(until);
            activities.add(new Activity(kind, at, end, place, site, part, method, kitSets, Optional.empty(), ""));
            at = end;
            return this;
        }

        private void end() {
            CrewDayRoster roster = round.roster().stream()
                    .filter(row -> row.crew().equals(crew) && row.date().equals(date))
                    .findFirst()
                    .orElseThrow();
            crewDays.add(new CrewDay(crew, date, roster.people(), roster.vehicle(), List.copyOf(activities)));
        }

        private Instant instant(String time) {
            return date.atTime(LocalTime.parse(time))
                    .atZone(round.header().zone())
                    .toInstant();
        }
    }
}
