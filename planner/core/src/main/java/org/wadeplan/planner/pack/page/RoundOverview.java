package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome.Reading;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.pack.map.WeekPicture;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Unplaced;

/** The whole round for the manager's wall: the week, each site's method, what is not visited, what was found. */
record RoundOverview(
        String title,
        String agency,
        List<DayRow> days,
        String picture,
        List<MethodRow> methods,
        List<Fact> unplaced,
        List<Fact> findings,
        List<String> score,
        List<Fact> versions) {

    private static final int MOST_REASONS = 3;

    /** Told under "not visited" already. */
    private static final String NOT_PLACED = "visit-not-placed";

    record DayRow(String date, String crew, String people, String hours, String visits) {}

    record MethodRow(String site, String line, String facts) {}

    boolean hasUnplaced() {
        return !unplaced.isEmpty();
    }

    static Section section(PlanSource source, Templates templates) {
        return new Section(
                "Round overview", source.round().header().title(), true, templates.fill("round-overview", of(source)));
    }

    static RoundOverview of(PlanSource source) {
        return new RoundOverview(
                source.round().header().title(),
                source.round().header().agency(),
                source.plan().week().crewDays().stream()
                        .map(day -> day(source, day))
                        .toList(),
                WeekPicture.of(source.plan().week().crewDays(), source.clock().zone())
                        .html(),
                source.plan().decisions().stream()
                        .map(decision -> method(source, decision))
                        .toList(),
                source.plan().week().unplaced().stream()
                        .map(RoundOverview::unplaced)
                        .toList(),
                source.plan().findings().stream()
                        .filter(problem -> !problem.code().equals(NOT_PLACED))
                        .map(RoundOverview::finding)
                        .toList(),
                source.plan().week().score(),
                versions(source));
    }

    private static DayRow day(PlanSource source, CrewDay day) {
        PackClock clock = source.clock();
        String visits = source.siteDays(day).stream()
                .map(visit -> visit.site().id() + " " + visit.parts() + " "
                        + clock.time(visit.first().start()) + (visit.authorised(source) ? "" : " NOT AUTHORISED"))
                .collect(Collectors.joining("; "));
        return new DayRow(
                clock.shortDay(day.date()),
                day.crew(),
                String.join(", ", source.names(day.people())),
                clock.timeOn(day.date(), day.start()) + " to " + clock.timeOn(day.date(), day.end()),
                visits);
    }

    private static MethodRow method(PlanSource source, MethodDecision decision) {
        List<Reading> readings = VisitPage.readings(source, decision.site());
        String facts = readings.stream()
                .map(reading -> reading.input() + " " + reading.value())
                .collect(Collectors.joining("; "));
        return new MethodRow(decision.site(), line(source, decision), facts);
    }

    private static String line(PlanSource source, MethodDecision decision) {
        return decision.chosen()
                .map(chosen -> source.methodLabel(chosen.method()) + "; " + MethodWords.ground(decision)
                        + (chosen.crewMin().isPresent()
                                ? "; " + chosen.crewMin().getAsInt() + " people"
                                : ""))
                .orElseGet(() -> VisitPage.methodLine(source, decision.site()));
    }

    private static Fact unplaced(Unplaced unplaced) {
        int more = unplaced.reasons().size() - MOST_REASONS;
        String first = unplaced.reasons().stream()
                .limit(MOST_REASONS)
                .map(Figures::ended)
                .collect(Collectors.joining(" "));
        return new Fact(
                unplaced.site() + " " + unplaced.method(),
                first + (more > 0 ? " And " + more + " more reasons; all of them are in the plan." : ""));
    }

    private static Fact finding(Problem problem) {
        String remedy = problem.remedy().isBlank() ? "" : " Do: " + problem.remedy();
        return new Fact(
                problem.severity().name().toLowerCase(Locale.ROOT),
                Figures.printed(where(problem) + Figures.ended(problem.found()) + Figures.ended(remedy)));
    }

    /** The site or thing that it is about, where its words do not name it. */
    private static String where(Problem problem) {
        return problem.place()
                .row()
                .filter(row -> !problem.found().contains(row))
                .map(row -> row + ": ")
                .orElse("");
    }

    private static List<Fact> versions(PlanSource source) {
        List<Fact> versions = new ArrayList<>();
        var version = source.plan().version();
        versions.add(new Fact(
                "Plan",
                version.label() + ", program " + version.program() + ", seed " + version.seed() + ", "
                        + version.iterations() + " iterations"));
        versions.add(new Fact("Input files", "SHA-256 " + version.inputHash()));
        Map<String, String> tables = new TreeMap<>();
        source.plan().decisions().forEach(decision -> tables.put(decision.table(), decision.tableHash()));
        tables.forEach((table, hash) -> versions.add(new Fact("Table " + table, brief(hash))));
        String files = source.round().hash().byFile().entrySet().stream()
                .filter(file -> !file.getKey().contains("_private"))
                .map(file -> file.getKey() + " " + brief(file.getValue()))
                .collect(Collectors.joining(", "));
        versions.add(new Fact("Round tables", files.isBlank() ? Figures.UNKNOWN : files));
        return versions;
    }

    private static String brief(String hash) {
        return hash.substring(0, Math.min(10, hash.length()));
    }
}
