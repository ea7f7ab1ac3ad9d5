package org.wadeplan.desktop.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.session.WeekInForce;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.trace.Find;
import org.wadeplan.planner.decon.trace.FindTrace;
import org.wadeplan.planner.decon.trace.TraceClock;
import org.wadeplan.planner.decon.trace.TraceReport;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/** A trace as a page to read: what is exposed, what changes, what can be ruled out and why, whom to tell. */
final class FindPage {

    private final Round round;
    private final TraceReport report;
    private final TraceClock clock;
    private final List<FindReport.Section> sections = new ArrayList<>();

    private FindPage(Round round, TraceReport report) {
        this.round = round;
        this.report = report;
        this.clock = new TraceClock(round.header().zone());
    }

    static FindReport of(Round round, WeekInForce week, SeenPest seen, WorkProgress progress) {
        Find find = new Find(seen.water(), seen.pest(), seen.seenAt(), Optional.empty(), Optional.empty());
        progress.at(Words.of("work.exposure"), 0.1);
        TraceReport report = FindTrace.of(round, week.plan(), find);
        progress.at(Words.of("work.cleanings"), 0.7);
        WeekInForce after = new WeekInForce(FindTrace.planAfter(round, week.plan(), find), week.agreed());
        FindPage page = new FindPage(round, report);
        page.write();
        return new FindReport(
                seen,
                page.title(),
                List.copyOf(page.sections),
                page.flagged(),
                report.span().applied(round),
                after);
    }

    private String title() {
        Find find = report.span().find();
        String pest = round.biosecurity().pests().stream()
                .filter(one -> one.id().equals(find.pest()))
                .findFirst()
                .map(Pest::name)
                .orElse(find.pest());
        String water = round.water(find.water()).map(Water::name).orElse(find.water());
        return Words.of("find.titleOf", pest, find.pest(), water, find.water(), clock.at(find.seen()));
    }

    private void write() {
        section("find.status", List.of(status()));
        section("find.exposedNow", exposed(kit -> !kit.before().isEmpty()));
        section("find.legs", report.legs().stream().map(this::leg).toList());
        section("find.unchanged", List.of(Words.of("find.unchangedCount", report.unchangedLegs())));
        section("find.broken", report.broken().stream().map(FindPage::broken).toList());
        section("find.spread", report.spread().stream().map(this::spread).toList());
        section("find.clear", waters(true));
        section("find.notClear", waters(false));
        section(
                "find.notices",
                report.notices().stream()
                        .map(notice -> Words.of("find.notice", Times.day(notice.by()), notice.whom(), notice.about()))
                        .toList());
        section("find.exposedLater", exposed(kit -> kit.before().isEmpty()));
    }

    /** Kit sets before items. */
    private List<String> exposed(Predicate<TraceReport.ExposedKit> which) {
        return report.exposed().stream()
                .filter(which)
                .sorted(Comparator.comparing(TraceReport.ExposedKit::item))
                .map(this::exposed)
                .toList();
    }

    private void section(String key, List<String> lines) {
        sections.add(new FindReport.Section(Words.of(key), lines));
    }

    private String status() {
        String clear = report.span()
                .lastClear()
                .map(day -> Words.of("find.sinceClear", day))
                .orElse(Words.of("find.neverClear"));
        return report.span().knownBefore() ? Words.of("find.knownBefore") + " " + clear : clear;
    }

    private String exposed(TraceReport.ExposedKit kit) {
        String what = kit.item() ? Words.of("find.item", kit.id(), kit.label()) : Words.of("find.set", kit.id());
        return what + ": " + stays("find.before", kit.before()) + stays("find.after", kit.after()) + kit.arrived()
                + ". " + kit.now();
    }

    private String stays(String key, List<TraceReport.Stay> stays) {
        return stays.isEmpty()
                ? ""
                : Words.of(
                                key,
                                stays.stream()
                                        .map(stay -> stay.where() + " " + clock.at(stay.from()))
                                        .collect(Collectors.joining(", ")))
                        + " ";
    }

    private String spread(TraceReport.Spread spread) {
        return Words.of(
                spread.happened() ? "find.went" : "find.goes",
                spread.id(),
                spread.from(),
                spread.where(),
                spread.water(),
                clock.at(spread.at()));
    }

    private String leg(TraceReport.ChangedLeg leg) {
        List<String> more = new ArrayList<>();
        leg.use().ifPresent(use -> more.add(Words.of("find.nextUse", use)));
        leg.departure().ifPresent(more::add);
        more.add(Words.of("find.dayEnds", clock.at(leg.dayEnd())));
        leg.rest().ifPresent(rest -> more.add(Words.of("find.rest", rest)));
        return Words.of(
                        leg.stands() ? "find.leg" : "find.legBroken",
                        leg.kitSet(),
                        leg.crew(),
                        clock.at(leg.start()),
                        leg.minutesBefore(),
                        leg.minutesAfter(),
                        leg.stepsAfter(),
                        clock.at(leg.released()))
                + "\n   " + String.join("; ", more);
    }

    private static String broken(Problem problem) {
        return problem.found() + (problem.remedy().isBlank() ? "" : "\n   " + Words.of("kit.wayOut", problem.remedy()));
    }

    private List<String> waters(boolean clear) {
        return report.otherWaters().stream()
                .filter(water -> water.clear() == clear)
                .map(water -> water.water() + ", " + water.name() + ": " + String.join(" ", water.because()) + " "
                        + Words.of("find.onFile", water.status()))
                .toList();
    }

    /** Kit sets alone: items have no lane. */
    private Map<String, FindReport.Flag> flagged() {
        Map<String, FindReport.Flag> flagged = new LinkedHashMap<>();
        report.exposed().stream()
                .filter(kit -> !kit.item())
                .forEach(kit ->
                        flagged.put(kit.id(), new FindReport.Flag(!kit.before().isEmpty(), exposed(kit))));
        return flagged;
    }
}
