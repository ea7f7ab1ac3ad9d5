package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.decon.DeconSheet;
import org.wadeplan.planner.decon.DeconSheetFacts;
import org.wadeplan.planner.decon.schedule.BenchPlace;
import org.wadeplan.planner.decon.schedule.BenchStep;
import org.wadeplan.planner.decon.schedule.BenchTask;
import org.wadeplan.planner.decon.schedule.PlannedBath;
import org.wadeplan.planner.week.DeconTask;

/** The steps of one cleaning by the clock of the bench, with the boxes and cautions of its printed sheet. */
record StepRows(List<StepRow> rows, List<Fact> cautions) {

    static final StepRows NONE = new StepRows(List.of(), List.of());

    static StepRows of(CleaningWeek week, DeconTask task) {
        DeconSheetFacts sheet = DeconSheet.of(week.round(), task);
        List<StepRow> rows =
                week.bench(task).map(bench -> rows(week, task, bench, sheet)).orElse(List.of());
        List<Fact> cautions = new ArrayList<>();
        sheet.cautions()
                .forEach(caution -> cautions.add(new Fact(Words.of("caution." + caution.topic()), caution.text())));
        cautions.add(new Fact(Words.of("caution.dispose"), sheet.disposal()));
        cautions.add(new Fact(Words.of("caution.also"), Words.of("caution.alsoWords")));
        return new StepRows(rows, List.copyOf(cautions));
    }

    private static List<StepRow> rows(CleaningWeek week, DeconTask task, BenchTask bench, DeconSheetFacts sheet) {
        List<StepRow> rows = new ArrayList<>();
        for (BenchStep step : bench.steps()) {
            Optional<DeconSheetFacts.Line> line = sheet.lines().stream()
                    .filter(one -> one.label().equals(step.label()))
                    .findFirst();
            rows.add(row(week, task.kitSet() + " " + task.start() + " " + rows.size(), bench, step, line));
        }
        return List.copyOf(rows);
    }

    private static StepRow row(
            CleaningWeek week, String id, BenchTask bench, BenchStep step, Optional<DeconSheetFacts.Line> line) {
        ZoneId zone = week.round().header().zone();
        Optional<PlannedBath> bath = bath(week, bench, step);
        String makeUp = bath.map(PlannedBath::makeUp)
                .filter(words -> !words.isBlank())
                .or(() -> line.flatMap(DeconSheetFacts.Line::makeUp))
                .orElse("");
        String busy = Words.of(step.crewBusy() ? "cleaning.busy" : "cleaning.alone");
        return new StepRow(
                id,
                span(step.start(), step.end(), zone),
                step.label(),
                Times.minutes(step.minutes()) + ", " + busy + waited(step),
                step.place().map(BenchPlace::words).orElse(""),
                Stream.of(step.target().orElse(""), makeUp)
                        .filter(words -> !words.isBlank())
                        .collect(Collectors.joining("; ")),
                line.map(one -> String.join("; ", one.boxes())).orElse(""),
                step.start(),
                CleaningWeek.contact(step.step()) ? Optional.of(step.minutes()) : Optional.empty());
    }

    private static String waited(BenchStep step) {
        return step.waitedMin() == 0 ? "" : "; " + Words.of("cleaning.waits", Times.minutes(step.waitedMin()));
    }

    private static Optional<PlannedBath> bath(CleaningWeek week, BenchTask bench, BenchStep step) {
        return week.baths().baths().stream()
                .filter(bath -> step.place().filter(bath.place()::equals).isPresent())
                .filter(bath -> bath.uses().stream()
                        .anyMatch(use -> use.kitSet().equals(bench.kitSet())
                                && !use.in().isAfter(step.start())
                                && !use.out().isBefore(step.end())))
                .findFirst();
    }

    private static String span(Instant from, Instant to, ZoneId zone) {
        boolean sameDay = LocalDate.ofInstant(from, zone).equals(LocalDate.ofInstant(to, zone));
        return Times.clock(from, zone) + " – " + (sameDay ? Times.clock(to, zone) : Times.dayClock(to, zone));
    }
}
