package org.wadeplan.planner.pack.page;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.method.MethodOutcome.Reading;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;

/** The visit: what to do and why, what was done last time, when, and the checks on arrival. */
record VisitPage(
        String heading,
        String methodLine,
        List<Reading> readings,
        String table,
        List<Fact> last,
        String settingsLine,
        List<String> cautions,
        String comparability,
        List<LastTime.ComparedRow> compared,
        String pace,
        List<TimeRow> times,
        List<Arrival> arrivals) {

    record TimeRow(String part, String planned, String p50, String p80, String window, String basis) {}

    /** One check on arrival. {@code write} says what to write in its box; blank where a tick is enough. */
    record Arrival(String number, String check, String write) {}

    boolean hasReadings() {
        return !readings.isEmpty();
    }

    boolean hasCompared() {
        return !compared.isEmpty();
    }

    boolean hasPace() {
        return !pace.isEmpty();
    }

    boolean hasSettings() {
        return !settingsLine.isBlank();
    }

    boolean hasCautions() {
        return !cautions.isEmpty();
    }

    static Section section(PlanSource source, SiteDay visit, Templates templates) {
        return new Section(
                "Visit page",
                visit.subject(source),
                visit.authorised(source),
                templates.fill("visit-page", of(source, visit)));
    }

    static VisitPage of(PlanSource source, SiteDay visit) {
        LastTime last = new LastTime(source, visit);
        return new VisitPage(
                visit.site().id() + " " + visit.site().name() + ": " + source.methodLabel(visit.method()) + ", "
                        + visit.parts(),
                methodLine(source, visit.site().id()),
                readings(source, visit.site().id()),
                tableLine(source, visit.site().id()),
                last.facts(),
                last.settingsLine(),
                last.cautions(),
                last.comparability(),
                last.compared(),
                last.pace(),
                visit.visits().stream().map(part -> time(source, visit, part)).toList(),
                ArrivalChecks.of(visit.kind(source) == MethodKind.ELECTROFISHING));
    }

    /** The method with its rule, or why there is none, in a sentence. */
    static String methodLine(PlanSource source, String site) {
        return source.plan()
                .decision(site)
                .map(decision -> decision.outcome()
                        .fold(
                                chosen -> "Method " + chosen.method() + " (" + source.methodLabel(chosen.method())
                                        + ") " + ground(decision) + crew(chosen.crewMin()),
                                undecided -> "Undecided: not known " + String.join(", ", undecided.missing())
                                        + "; could be " + String.join(" or ", undecided.possibleMethods()),
                                noRule -> "No rule of the table fits this site",
                                clash -> "Rules " + clash.rules() + " clash: " + String.join(" and ", clash.methods())))
                .orElse("No decision was made for this site");
    }

    private static String ground(MethodDecision decision) {
        String ground = MethodWords.ground(decision);
        return decision.overridden().isPresent() ? ground : "by " + ground;
    }

    private static String crew(OptionalInt crewMin) {
        return crewMin.isPresent() ? "; at least " + crewMin.getAsInt() + " people" : "";
    }

    /** The readings that the rule asks about; cells that take any value are left out. */
    static List<Reading> readings(PlanSource source, String site) {
        return source
                .plan()
                .decision(site)
                .flatMap(decision -> decision.chosen())
                .map(MethodOutcome.Chosen::readings)
                .orElse(List.of())
                .stream()
                .filter(reading ->
                        !reading.cell().equals("-") && !reading.cell().equals("any"))
                .toList();
    }

    private static String tableLine(PlanSource source, String site) {
        return source.plan()
                .decision(site)
                .map(decision -> "Table " + decision.table() + ", version "
                        + decision.tableHash()
                                .substring(0, Math.min(10, decision.tableHash().length())))
                .orElse("");
    }

    private static TimeRow time(PlanSource source, SiteDay visit, Activity activity) {
        PackClock clock = source.clock();
        VisitPart part = activity.part().orElse(VisitPart.SURVEY);
        String site = visit.site().id();
        PartEffort effort = source.plan()
                .effort(site)
                .flatMap(known -> known.part(part))
                .orElse(new PartEffort(part, activity.minutes(), activity.minutes(), 0, activity.note()));
        return new TimeRow(
                part.word(),
                clock.timeOn(visit.date(), activity.start()) + " to " + clock.timeOn(visit.date(), activity.end()),
                effort.p50Min() + " min",
                effort.p80Min() + " min",
                source.placement(site, part)
                        .map(place -> window(clock, visit, place.windowStart(), place.windowEnd()) + place.binding())
                        .orElse("none recorded"),
                effort.basis());
    }

    private static String window(PackClock clock, SiteDay visit, Optional<Instant> from, Optional<Instant> until) {
        String opens =
                from.map(at -> "from " + clock.timeOn(visit.date(), at) + " ").orElse("");
        String closes =
                until.map(at -> "until " + clock.timeOn(visit.date(), at)).orElse("");
        String both = (opens + closes).strip();
        return both.isEmpty() ? "" : both + ": ";
    }
}
