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
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;

/** The steps of one cleaning, from the same facts as its printed sheet. */
record StepRows(List<StepRow> rows, List<Fact> cautions) {

    static final StepRows NONE = new StepRows(List.of(), List.of());

    static StepRows of(Round round, DeconTask task) {
        DeconSheetFacts sheet = DeconSheet.of(round, task);
        List<StepRow> rows = new ArrayList<>();
        for (DeconSheetFacts.Line line : sheet.lines()) {
            rows.add(row(round, CleaningTasks.id(task) + " " + rows.size(), line));
        }
        List<Fact> cautions = new ArrayList<>();
        sheet.cautions()
                .forEach(caution -> cautions.add(new Fact(Words.of("caution." + caution.topic()), caution.text())));
        cautions.add(new Fact(Words.of("caution.dispose"), sheet.disposal()));
        cautions.add(new Fact(Words.of("caution.also"), Words.of("caution.alsoWords")));
        return new StepRows(List.copyOf(rows), List.copyOf(cautions));
    }

    private static StepRow row(Round round, String id, DeconSheetFacts.Line line) {
        ZoneId zone = round.header().zone();
        Instant end = line.plannedStart().plusSeconds(60L * line.minutes());
        boolean contact = line.step().equals("soak") || line.step().equals("freeze");
        String busy = Words.of(line.crewBusy() ? "cleaning.busy" : "cleaning.alone");
        return new StepRow(
                id,
                span(line.plannedStart(), end, zone),
                line.label(),
                Times.minutes(line.minutes()) + ", " + busy,
                line.resource().map(resource -> label(round, resource)).orElse(""),
                Stream.of(line.target(), line.makeUp())
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining("; ")),
                String.join("; ", line.boxes()),
                line.plannedStart(),
                contact ? Optional.of(line.minutes()) : Optional.empty());
    }

    private static String span(Instant from, Instant to, ZoneId zone) {
        boolean sameDay = LocalDate.ofInstant(from, zone).equals(LocalDate.ofInstant(to, zone));
        return Times.clock(from, zone) + "–" + (sameDay ? Times.clock(to, zone) : Times.dayClock(to, zone));
    }

    private static String label(Round round, String id) {
        return round.biosecurity().resources().stream()
                .filter(resource -> resource.id().equals(id))
                .map(DeconResource::label)
                .findFirst()
                .orElse(id);
    }
}
