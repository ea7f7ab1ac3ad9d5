package org.wadeplan.planner.pack.page;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.BathTarget;
import org.wadeplan.planner.decon.ChemicalCaution;
import org.wadeplan.planner.decon.CleaningSheet;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.LooseItem;
import org.wadeplan.planner.decon.schedule.BathPlan;
import org.wadeplan.planner.decon.schedule.BenchPlace;
import org.wadeplan.planner.decon.schedule.BenchStep;
import org.wadeplan.planner.decon.schedule.BenchTask;
import org.wadeplan.planner.decon.schedule.PlannedBath;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/** The cleaning of one kit set on one page: baths, steps, items, drying, cautions, signatures, and the evidence behind it. */
record DeconPage(
        String heading,
        List<Fact> facts,
        List<Soak> soaks,
        List<Step> steps,
        List<CleaningSheet.Items> items,
        List<Loose> loose,
        String releaseFrom,
        String releaseRule,
        List<String> cautions,
        String disposal,
        String checker,
        List<DeconCovers> covers,
        String refusals,
        String tables) {

    /** A contact with its target and the boxes for what was measured. */
    record Soak(
            String agent,
            String target,
            String where,
            String makeUp,
            String ready,
            String reading,
            String minutes,
            String mode) {}

    record Step(String start, String label, String minutes, String where) {}

    /** Items outside the sets that were used with it and are treated alike, by their serials. */
    record Loose(String items, String care) {}

    /** What a page is about, with the week's baths and what every item touched. */
    record Cleaning(DeconTask task, BathPlan baths, ExposureLedger ledger) {}

    static Section section(PlanSource source, CrewDay day, Cleaning cleaning, Templates templates) {
        DeconTask task = cleaning.task();
        String subject = "kit set " + task.kitSet() + " · crew " + task.crew() + " · "
                + source.clock().day(source.clock().date(task.start()));
        return new Section("Decontamination", subject, true, templates.fill("decon-page", of(source, day, cleaning)));
    }

    static DeconPage of(PlanSource source, CrewDay day, Cleaning cleaning) {
        DeconTask task = cleaning.task();
        CleaningSheet sheet = CleaningSheet.of(source.round(), source.plan().week(), cleaning.baths(), task);
        BenchTask bench = sheet.bench().orElseThrow();
        return new DeconPage(
                "Clean kit set " + task.kitSet(),
                facts(source, day.date(), task, bench),
                soaks(source, day.date(), bench, sheet.baths()),
                steps(source, day.date(), bench),
                sheet.items(),
                loose(cleaning.ledger().looseWith(task)),
                source.clock().timeOn(day.date(), later(task, bench)),
                releaseRule(bench),
                cautions(sheet),
                sheet.facts().disposal(),
                checker(sheet),
                DeconCovers.of(source.round(), task),
                refusals(source, task),
                "Round " + source.round().hash().brief() + "; " + sheet.facts().ruleVersion() + ".");
    }

    /** The bench may be busier than the week took it to be, never the other way round. */
    private static Instant later(DeconTask task, BenchTask bench) {
        return bench.released().isAfter(task.released()) ? bench.released() : task.released();
    }

    private static List<Fact> facts(PlanSource source, LocalDate day, DeconTask task, BenchTask bench) {
        PackClock clock = source.clock();
        String waters = task.fromWaters().stream()
                .map(id -> source.round().water(id).map(Water::name).orElse(id))
                .collect(Collectors.joining(", "));
        String pests = task.covers().stream()
                .map(cover -> pest(source, cover.pest()))
                .distinct()
                .collect(Collectors.joining(", "));
        return List.of(
                new Fact("Was in", waters),
                new Fact("Against", pests.isEmpty() ? "nothing on file" : pests),
                new Fact(
                        "Start",
                        clock.timeOn(day, bench.start()) + ", " + bench.people() + " of crew " + bench.crew()
                                + " until " + clock.timeOn(day, bench.crewFree())),
                new Fact("Not out before", clock.timeOn(day, later(task, bench)) + ", and only if signed"));
    }

    private static String pest(PlanSource source, String id) {
        return source.round().biosecurity().pests().stream()
                .filter(pest -> pest.id().equals(id))
                .map(Pest::name)
                .findFirst()
                .orElse(id);
    }

    private static List<Soak> soaks(PlanSource source, LocalDate day, BenchTask bench, List<PlannedBath> baths) {
        List<Soak> soaks = new ArrayList<>();
        for (BenchStep step : bench.steps()) {
            if (step.target().isPresent()) {
                String target = step.target().get();
                Optional<PlannedBath> bath = baths.stream()
                        .filter(one ->
                                one.target().equals(target) && step.place().equals(Optional.of(one.place())))
                        .findFirst();
                soaks.add(new Soak(
                        bath.flatMap(PlannedBath::agent).orElse(step.label()),
                        target.replace(" °C", "\u00a0°C"),
                        where(step),
                        bath.map(PlannedBath::makeUp)
                                .filter(words -> !words.isEmpty())
                                .orElse("as the label says"),
                        bath.map(one -> ready(source, day, bench, one)).orElse(""),
                        BathTarget.of(target).basis().orElse("°C"),
                        step.minutes() + " min",
                        mode(step)));
            }
        }
        return List.copyOf(soaks);
    }

    /** For the first set when it must be ready; for a later one that it was used, and what that means. */
    private static String ready(PlanSource source, LocalDate day, BenchTask bench, PlannedBath bath) {
        PackClock clock = source.clock();
        String discard = clock.date(bath.discardBy()).isAfter(day)
                        && clock.time(bath.discardBy()).equals("00:00")
                ? "midnight"
                : clock.timeOn(day, bath.discardBy());
        String first = bath.uses().get(0).kitSet();
        String ready = first.equals(bench.kitSet())
                ? "Ready by " + clock.timeOn(day, bath.readyBy())
                : "Used for " + first + " from " + clock.timeOn(day, bath.readyBy())
                        + (bath.startLiddedC().isPresent() ? ": heat it again" : ": measure it again");
        return ready + ", tip out by " + discard;
    }

    private static String mode(BenchStep step) {
        return switch (step.step()) {
            case "soak" -> "soaked, all under, folds and soles too";
            case "spray" -> "sprayed and kept wet all over";
            case "wipe" -> "wiped and kept wet all over";
            case "steam" -> "steamed all over";
            case "freeze" -> "drained, spread out and frozen";
            default -> step.step();
        };
    }

    private static String where(BenchStep step) {
        return step.place().map(BenchPlace::words).orElse("");
    }

    private static List<Step> steps(PlanSource source, LocalDate day, BenchTask bench) {
        return bench.steps().stream()
                .map(step -> new Step(source.clock().timeOn(day, step.start()), step.label(), lasts(step), where(step)))
                .toList();
    }

    /** Blank where the label says it already. */
    private static String lasts(BenchStep step) {
        if (step.label().contains(" min")) {
            return "";
        }
        boolean wholeHours = step.minutes() >= 120 && step.minutes() % 60 == 0;
        String time = wholeHours ? step.minutes() / 60 + " h" : step.minutes() + " min";
        return step.crewBusy() ? time : time + ", alone";
    }

    private static List<Loose> loose(List<LooseItem> items) {
        Map<String, List<String>> byCare = new LinkedHashMap<>();
        items.forEach(item ->
                byCare.computeIfAbsent(item.care(), care -> new ArrayList<>()).add(item.id()));
        return byCare.entrySet().stream()
                .map(entry -> new Loose(String.join(", ", entry.getValue()), entry.getKey()))
                .toList();
    }

    private static String releaseRule(BenchTask bench) {
        return bench.steps().stream()
                .map(BenchStep::label)
                .filter(label -> label.startsWith("keep dry"))
                .findFirst()
                .map(label -> "and " + label)
                .orElse("and only once it is dry to the touch");
    }

    private static List<String> cautions(CleaningSheet sheet) {
        Set<String> cautions = new LinkedHashSet<>();
        cautions.add(
                "The clock starts when the last surface is wet, in a hot bath when it is back at its temperature with the"
                        + " gear in. Cut short, or under the target at the end, is not done: start again.");
        sheet.facts().cautions().stream().map(ChemicalCaution::text).forEach(cautions::add);
        return List.copyOf(cautions);
    }

    private static String checker(CleaningSheet sheet) {
        return sheet.secondPerson()
                .map(why -> "Checked by ANOTHER person (" + why + "), signature, time")
                .orElse("Checked by another person (good practice, not asked for here), signature, time");
    }

    /** What the table blocks for the pests at hand, so that nobody takes the short way. */
    private static String refusals(PlanSource source, DeconTask task) {
        Set<String> pests = task.covers().stream().map(cover -> cover.pest()).collect(Collectors.toSet());
        String words = source.round().biosecurity().treatments().stream()
                .filter(row -> row.grade() == EvidenceGrade.X && pests.contains(row.pest()))
                .map(DeconPage::refusal)
                .distinct()
                .collect(Collectors.joining("; "));
        return words.isEmpty() ? "" : "Tested and NOT effective: " + words + ".";
    }

    private static String refusal(Treatment row) {
        return row.id() + " (" + row.mode().name().toLowerCase(Locale.ROOT) + ") against " + row.pest();
    }
}
