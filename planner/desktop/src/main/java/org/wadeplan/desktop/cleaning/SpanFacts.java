package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Why a kit set stands as it does: what it touched, which treatment with which evidence, when it is released. */
final class SpanFacts {

    private final WeekPlan week;
    private final KitSet set;
    private final Optional<String> flag;
    private final ZoneId zone;

    SpanFacts(Round round, WeekPlan week, KitSet set, Optional<String> flag) {
        this.week = week;
        this.set = set;
        this.flag = flag;
        this.zone = round.header().zone();
    }

    SetSpan span(
            SetState state,
            Instant from,
            Instant to,
            List<String> waters,
            Optional<String> site,
            Optional<String> task,
            List<Fact> why) {
        String spoken = Words.of(
                "cleaning.spoken",
                set.id(),
                state.words(),
                site.map(at -> Words.of("cleaning.atSite", at)).orElse(""),
                Times.dayClock(from, zone),
                Times.dayClock(to, zone));
        List<Fact> all = new ArrayList<>();
        all.add(new Fact(Words.of("fact.what"), spoken));
        flag.ifPresent(said -> all.add(new Fact(Words.of("cleaning.find"), said)));
        all.addAll(why);
        return new SetSpan(set.id(), state, from, to, waters, site, task, spoken, List.copyOf(all));
    }

    List<Fact> use(CrewDay day, Activity visit, String water, List<String> before, Optional<Instant> tooEarly) {
        List<Fact> facts = new ArrayList<>();
        tooEarly.ifPresent(due -> facts.add(new Fact(
                Words.of("cleaning.tooEarly"), Words.of("cleaning.tooEarlyWords", Times.dayClock(due, zone)))));
        facts.add(new Fact(Words.of("cleaning.touches"), Words.of("cleaning.water", water)));
        facts.add(new Fact(Words.of("fact.who"), Words.of("week.crewLane", day.crew())));
        facts.add(new Fact(
                Words.of("cleaning.before"),
                before.isEmpty() ? Words.of("cleaning.nothingBefore") : String.join(", ", before)));
        facts.add(new Fact(Words.of("cleaning.next"), next(visit.end())));
        return facts;
    }

    private String next(Instant after) {
        return week.decon().stream()
                .filter(task -> task.kitSet().equals(set.id()) && !task.start().isBefore(after))
                .findFirst()
                .map(task -> Words.of(
                        "cleaning.nextClean",
                        Times.dayClock(task.start(), zone),
                        task.crew(),
                        Times.dayClock(task.released(), zone)))
                .orElse(Words.of("cleaning.noClean"));
    }

    List<Fact> resting(SetState state, Instant since, List<String> touched, Optional<DeconTask> clean) {
        return switch (state) {
            case DIRTY ->
                List.of(
                        new Fact(Words.of("cleaning.touched"), touchedWords(touched)),
                        new Fact(Words.of("cleaning.next"), next(since)));
            case RELEASED -> clean.map(this::released).orElse(List.of());
            case OUT_OF_SERVICE -> note("cleaning.outWords");
            case DRYING -> note("cleaning.dryingAtStart");
            default -> note("cleaning.cleanAtStart");
        };
    }

    private static String touchedWords(List<String> touched) {
        return touched.isEmpty() ? Words.of("cleaning.touchedUnknown") : String.join(", ", touched);
    }

    private List<Fact> note(String key) {
        String said = set.note().map(note -> "\n" + note).orElse("");
        return List.of(new Fact(Words.of("cleaning.basis"), Words.of(key) + said));
    }

    List<Fact> cleaning(DeconTask task) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(Words.of("cleaning.touched"), touchedWords(task.fromWaters())));
        facts.add(new Fact(Words.of("fact.who"), Words.of("week.crewLane", task.crew())));
        facts.add(new Fact(
                Words.of("cleaning.released"),
                Words.of(
                        "cleaning.releasedWords",
                        Times.dayClock(task.crewFree(), zone),
                        Times.dayClock(task.released(), zone))));
        facts.add(new Fact(Words.of("cleaning.whyThis"), task.reason()));
        facts.add(new Fact(Words.of("fact.covers"), covers(task)));
        return facts;
    }

    List<Fact> drying(DeconTask task) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(Words.of("cleaning.mind"), Words.of("cleaning.dryMind")));
        facts.addAll(cleaning(task));
        return facts;
    }

    private List<Fact> released(DeconTask task) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(Words.of("cleaning.mind"), Words.of("cleaning.releaseMind")));
        facts.addAll(cleaning(task));
        return facts;
    }

    private static String covers(DeconTask task) {
        return task.covers().isEmpty()
                ? Words.of("cleaning.noEvidence")
                : task.covers().stream().map(SpanFacts::cover).distinct().collect(Collectors.joining("\n"));
    }

    private static String cover(Turnaround.Cover cover) {
        String material = cover.material().name().toLowerCase(java.util.Locale.ROOT);
        return Words.of("fact.cover", cover.pest(), material, cover.treatment(), cover.grade()) + "; " + cover.source();
    }
}
