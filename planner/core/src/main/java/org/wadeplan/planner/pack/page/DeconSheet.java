package org.wadeplan.planner.pack.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround.Cover;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/** The cleaning of one kit set: steps with their targets, room for what was measured, the evidence, the signatures. */
record DeconSheet(
        String heading,
        List<Fact> facts,
        String reason,
        List<Step> steps,
        List<CoverRow> covers,
        List<String> cautions) {

    record Step(String number, String label, String minutes, String target, String resource) {}

    record CoverRow(String pest, String material, String treatment, String mode, String grade, String source) {}

    boolean hasCovers() {
        return !covers.isEmpty();
    }

    static Section section(PlanSource source, CrewDay day, DeconTask task, Templates templates) {
        String subject = "kit set " + task.kitSet() + " · crew " + task.crew() + " · "
                + source.clock().day(source.clock().date(task.start()));
        return new Section("Decontamination", subject, true, templates.fill("decon-sheet", of(source, day, task)));
    }

    static DeconSheet of(PlanSource source, CrewDay day, DeconTask task) {
        List<Step> steps = new ArrayList<>();
        task.steps().forEach(step -> steps.add(step(steps.size() + 1, step)));
        return new DeconSheet(
                "Clean kit set " + task.kitSet(),
                facts(source, day.date(), task),
                task.reason(),
                List.copyOf(steps),
                task.covers().stream().map(cover -> cover(source, cover)).toList(),
                cautions(task));
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

    private static Step step(int number, DeconStep step) {
        return new Step(
                Integer.toString(number),
                step.label(),
                step.minutes() + (step.crewBusy() ? " min" : " min, alone"),
                step.target().orElse(""),
                step.resource().map(place -> "(" + place + ")").orElse(""));
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

    private static List<String> cautions(DeconTask task) {
        List<String> cautions = new ArrayList<>(List.of(
                "The clock starts when the last surface is under and wet, folds and soles too. Short is not done: start again.",
                "Goggles and long gloves; in the open or well aired. Product into water, never water into product.",
                "Never mix products: bleach with acid or ammonia gives poison gas. Rinse between different products.",
                "Follow the label and the safety data sheet; they go before this sheet."));
        boolean hot =
                task.steps().stream().flatMap(step -> step.target().stream()).anyMatch(target -> target.contains("°C"));
        if (hot) {
            cautions.add("Hot water scalds in seconds: tongs and long gloves, nobody reaches in, lid on between dips.");
        }
        return cautions;
    }
}
