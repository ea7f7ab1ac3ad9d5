package org.wadeplan.desktop.cleaning;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.LaneMoment;
import org.wadeplan.planner.decon.ledger.OpenExposures;
import org.wadeplan.planner.decon.ledger.Treated;
import org.wadeplan.planner.week.DeconTask;

/** Why a kit set stands as it does: what it touched, which treatment with which evidence, when and for what it is released. */
final class SpanFacts {

    private final CleaningWeek week;
    private final SetSpan span;
    private final ZoneId zone;
    private final List<Fact> facts = new ArrayList<>();

    private SpanFacts(CleaningWeek week, SetSpan span) {
        this.week = week;
        this.span = span;
        this.zone = week.round().header().zone();
    }

    /** In order of reading. */
    static List<Fact> of(CleaningWeek week, SetSpan span, Optional<String> flag) {
        SpanFacts made = new SpanFacts(week, span);
        made.add("fact.what", span.spoken());
        flag.ifPresent(why -> made.add("cleaning.find", why));
        span.breach().ifPresent(breach -> made.add("cleaning.breach", breach));
        made.add("cleaning.cause", span.cause());
        week.lane(span).ifPresent(made::moment);
        week.treated(span).ifPresent(made::treated);
        if (span.state() == SetState.IN_USE || span.state() == SetState.DIRTY) {
            made.add("cleaning.next", made.next());
        }
        return List.copyOf(made.facts);
    }

    private void add(String headKey, String text) {
        if (!text.isBlank()) {
            facts.add(new Fact(Words.of(headKey), text));
        }
    }

    private void moment(Lane lane) {
        LaneMoment moment = LaneMoment.of(week.round(), lane, new OpenExposures(week.round()), span.from());
        add(
                "cleaning.touched",
                moment.exposedTo().isEmpty()
                        ? Words.of("cleaning.nothingOnFile")
                        : String.join(", ", moment.exposedTo()));
        moment.wetSince()
                .filter(since -> !moment.exposedTo().isEmpty())
                .ifPresent(since -> add("cleaning.wetSince", Times.dayClock(since, zone)));
        if (span.state() == SetState.CLEAN_DRY || span.state() == SetState.RELEASED) {
            add(
                    "cleaning.releasedFor",
                    moment.releasedFor().isEmpty()
                            ? Words.of("cleaning.noWater")
                            : String.join(", ", moment.releasedFor()));
        }
    }

    private void treated(Treated treated) {
        if (span.state() != SetState.TREATING) {
            boolean dries = span.state() == SetState.DRYING;
            add("cleaning.mind", Words.of(dries ? "cleaning.dryMind" : "cleaning.releaseMind"));
        }
        add("cleaning.treatment", treated.what() + "\n" + treated.by());
        if (treated.onRecord()) {
            add(
                    "cleaning.onRecord",
                    Words.of(treated.refused() ? "cleaning.recordRefused" : "cleaning.recordAccepted"));
        }
        add("cleaning.released", released(treated));
        add("cleaning.reasons", String.join("\n", treated.reasons()));
        week.task(span).ifPresent(task -> {
            later(task);
            add("cleaning.whyThis", task.reason());
        });
        add("fact.covers", covers(treated));
    }

    private String released(Treated treated) {
        return treated.released()
                .map(at -> Words.of(
                        "cleaning.releasedWords", Times.dayClock(treated.crewFree(), zone), Times.dayClock(at, zone)))
                .orElse(Words.of("cleaning.notReleased"));
    }

    private void later(DeconTask task) {
        week.bench(task)
                .filter(bench -> bench.released().isAfter(task.released()))
                .ifPresent(bench -> {
                    long minutes =
                            Duration.between(task.released(), bench.released()).toMinutes();
                    add(
                            "cleaning.bench",
                            Words.of(
                                    "cleaning.benchLater",
                                    Times.minutes(Math.toIntExact(minutes)),
                                    Times.dayClock(bench.released(), zone)));
                });
    }

    private static String covers(Treated treated) {
        return treated.credits().isEmpty()
                ? Words.of("cleaning.noEvidence")
                : treated.credits().stream()
                        .map(credit -> cover(credit.cover()))
                        .distinct()
                        .collect(Collectors.joining("\n"));
    }

    private static String cover(Turnaround.Cover cover) {
        String material = cover.material().name().toLowerCase(Locale.ROOT);
        return Words.of("fact.cover", cover.pest(), material, cover.treatment(), cover.grade()) + "; " + cover.source();
    }

    private String next() {
        return week.week().decon().stream()
                .filter(task ->
                        task.kitSet().equals(span.kitSet()) && !task.start().isBefore(span.from()))
                .findFirst()
                .map(task -> Words.of(
                        "cleaning.nextClean",
                        Times.dayClock(task.start(), zone),
                        task.crew(),
                        Times.dayClock(task.released(), zone)))
                .orElse(Words.of("cleaning.noClean"));
    }
}
