package org.wadeplan.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.ledger.LooseItem;
import org.wadeplan.planner.decon.schedule.BathPlan;
import org.wadeplan.planner.decon.schedule.BathStock;
import org.wadeplan.planner.decon.schedule.BenchBound;
import org.wadeplan.planner.decon.schedule.BenchStep;
import org.wadeplan.planner.decon.schedule.BenchTask;
import org.wadeplan.planner.decon.schedule.PlannedBath;
import org.wadeplan.planner.round.Round;

/** The week's cleaning by day and clock as lines of text. */
final class BenchText {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private final BathPlan plan;
    private final List<LooseWith> loose;
    private final ZoneId zone;

    /** Items outside the sets that are cleaned together with one. */
    record LooseWith(String kitSet, Instant start, List<LooseItem> items) {}

    BenchText(Round round, BathPlan plan, List<LooseWith> loose) {
        this.plan = plan;
        this.loose = loose;
        this.zone = round.header().zone();
    }

    List<String> lines() {
        List<String> text = new ArrayList<>();
        text.add("The week's cleaning by the clock · times in " + zone);
        LocalDate day = LocalDate.MIN;
        for (BenchTask task : plan.bench().tasks()) {
            if (!task.day().equals(day)) {
                day = task.day();
                text.add("");
                text.add(DAY.format(day));
                baths(text, day);
            }
            task(text, task);
        }
        text.add("");
        stock(text);
        bench(text);
        return text;
    }

    private void baths(List<String> text, LocalDate day) {
        for (PlannedBath bath : plan.baths()) {
            if (bath.day().equals(day)) {
                String uses = bath.uses().stream()
                        .map(use -> use.kitSet() + " " + time(use.in()) + "-" + time(use.out()))
                        .collect(Collectors.joining(", "));
                text.addAll(TextTable.hanging(
                        "  bath  ",
                        bath.place().words() + ": " + words(bath) + "; ready by " + time(bath.readyBy()) + " (crew "
                                + bath.crew() + "); for " + uses + "; tip out by "
                                + DAY_TIME.format(bath.discardBy().atZone(zone))));
            }
        }
    }

    private static String words(PlannedBath bath) {
        String what = bath.agent().map(agent -> agent + " ").orElse("") + bath.target();
        return bath.makeUp().isEmpty() ? what : what + ", " + bath.makeUp();
    }

    private void task(List<String> text, BenchTask task) {
        text.addAll(TextTable.hanging(
                "  " + time(task.start()) + " ",
                task.kitSet() + " from " + String.join(", ", task.fromWaters()) + " · crew " + task.crew() + ", "
                        + task.people() + " of them busy until " + time(task.crewFree()) + " · released "
                        + DAY_TIME.format(task.released().atZone(zone))));
        for (BenchStep step : task.steps()) {
            String waited = step.waitedMin() == 0 ? "" : " (waits " + step.waitedMin() + " min for the place)";
            String target = step.target().map(one -> ", " + one).orElse("");
            text.addAll(TextTable.hanging(
                    "        " + time(step.start()) + "-" + time(step.end()) + " ",
                    step.step()
                            + target
                            + step.place().map(one -> ", " + one.words()).orElse("")
                            + waited
                            + (step.crewBusy() ? "" : ", nobody busy")));
        }
        loose(text, task);
    }

    private void loose(List<String> text, BenchTask task) {
        Map<String, List<String>> byCare = new LinkedHashMap<>();
        loose.stream()
                .filter(one -> one.kitSet().equals(task.kitSet()) && one.start().equals(task.asked()))
                .flatMap(one -> one.items().stream())
                .forEach(item -> byCare.computeIfAbsent(item.care(), care -> new ArrayList<>())
                        .add(item.id()));
        byCare.forEach((care, items) ->
                text.addAll(TextTable.hanging("        with it     ", String.join(", ", items) + ": " + care)));
    }

    private void stock(List<String> text) {
        for (BathStock one : plan.stock()) {
            text.addAll(TextTable.hanging("", one.words(zone)));
        }
    }

    private void bench(List<String> text) {
        TextTable table = new TextTable("day", "place", "room for", "use_min", "at least_min", "taken_min");
        for (BenchBound bound : plan.bench().bounds()) {
            table.row(
                    DAY.format(bound.day()),
                    bound.label(),
                    Integer.toString(bound.places()),
                    Integer.toString(bound.useMin()),
                    Integer.toString(bound.atLeastMin()),
                    Integer.toString(bound.takenMin()));
        }
        text.addAll(table.lines());
        text.add(
                "at least_min: no order of the same cleanings takes less between the first set in and the last one out.");
        plan.bench()
                .gains()
                .forEach(gain -> text.addAll(
                        TextTable.hanging("Sooner: ", DAY.format(gain.task().day()) + ", " + gain.words() + ".")));
        plan.bench()
                .later()
                .forEach(late -> text.addAll(TextTable.hanging(
                        "Later:  ",
                        late.task().kitSet() + " on " + DAY.format(late.task().day()) + " is released "
                                + late.minutesLater()
                                + " min later than the week says, because a place or a person is taken.")));
    }

    private String time(Instant at) {
        return TIME.format(at.atZone(zone));
    }
}
