package org.wadeplan.planner.pack.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.decon.ChemicalCaution;
import org.wadeplan.planner.decon.DeconSheet;
import org.wadeplan.planner.decon.DeconSheetFacts;
import org.wadeplan.planner.decon.Turnaround.Cover;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/** The cleaning of one kit set: steps with their targets, room for what was measured, the evidence, the signatures. */
record DeconPage(
        String heading,
        List<Fact> facts,
        String reason,
        List<Step> steps,
        List<String> makeUps,
        List<CoverRow> covers,
        List<String> cautions,
        String disposal,
        String tables) {

    record Step(String number, String start, String label, String minutes, String target, String resource) {}

    record CoverRow(String pest, String material, String treatment, String mode, String grade, String source) {}

    boolean hasCovers() {
        return !covers.isEmpty();
    }

    static Section section(PlanSource source, CrewDay day, DeconTask task, Templates templates) {
        String subject = "kit set " + task.kitSet() + " · crew " + task.crew() + " · "
                + source.clock().day(source.clock().date(task.start()));
        return new Section("Decontamination", subject, true, templates.fill("decon-page", of(source, day, task)));
    }

    static DeconPage of(PlanSource source, CrewDay day, DeconTask task) {
        DeconSheetFacts sheet = DeconSheet.of(source.round(), task);
        List<Step> steps = new ArrayList<>();
        sheet.lines().forEach(line -> steps.add(step(source, day.date(), steps.size() + 1, line)));
        return new DeconPage(
                "Clean kit set " + task.kitSet(),
                facts(source, day.date(), task),
                task.reason(),
                List.copyOf(steps),
                makeUps(sheet),
                task.covers().stream().map(cover -> cover(source, cover)).toList(),
                cautions(sheet),
                sheet.disposal(),
                sheet.ruleVersion());
    }

    private static List<String> makeUps(DeconSheetFacts sheet) {
        return sheet.lines().stream()
                .flatMap(line -> line.makeUp().stream().map(how -> line.label() + ": " + how + "."))
                .toList();
    }

    private static List<Fact> facts(PlanSource source, LocalDate day, DeconTask task) {
        PackClock clock = source.clock();
        return List.of(
                new Fact("Was in", String.join(", ", waters(source, task))),
                new Fact("Start", clock.timeOn(day, task.start())),
                new Fact("People free at", clock.timeOn(day, task.crewFree())),
                new Fact(
                        "Kit set released at",
                        clock.timeOn(day, task.released()) + ", not earlier, and only if signed"));
    }

    private static List<String> waters(PlanSource source, DeconTask task) {
        return task.fromWaters().stream()
                .map(id -> source.round().water(id).map(Water::name).orElse(id))
                .toList();
    }

    private static Step step(PlanSource source, LocalDate day, int number, DeconSheetFacts.Line line) {
        return new Step(
                Integer.toString(number),
                source.clock().timeOn(day, line.plannedStart()),
                line.label(),
                line.minutes() + (line.crewBusy() ? " min" : " min, alone"),
                line.target().orElse(""),
                line.resource()
                        .map(place -> "(" + resource(source, place) + ")")
                        .orElse(""));
    }

    private static String resource(PlanSource source, String id) {
        return source.round().biosecurity().resources().stream()
                .filter(resource -> resource.id().equals(id))
                .map(DeconResource::label)
                .findFirst()
                .orElse(id);
    }

    private static CoverRow cover(PlanSource source, Cover cover) {
        String mode = source.round().biosecurity().treatments().stream()
                .filter(row -> row.id().equals(cover.treatment())
                        && row.pest().equals(cover.pest())
                        && row.material() == cover.material())
                .map(Treatment::mode)
                .map(known -> known.name().toLowerCase(Locale.ROOT))
                .findFirst()
                .orElse("not stated");
        return new CoverRow(
                source.round().biosecurity().pests().stream()
                        .filter(pest -> pest.id().equals(cover.pest()))
                        .map(Pest::name)
                        .findFirst()
                        .orElse(cover.pest()),
                cover.material().name().toLowerCase(Locale.ROOT),
                cover.treatment(),
                mode,
                cover.grade().name(),
                cover.source());
    }

    private static List<String> cautions(DeconSheetFacts sheet) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "The clock starts when the last surface is under and wet, folds and soles too. Cut short is not done: "
                        + "start again.");
        sheet.cautions().stream().map(ChemicalCaution::text).forEach(cautions::add);
        return List.copyOf(cautions);
    }
}
