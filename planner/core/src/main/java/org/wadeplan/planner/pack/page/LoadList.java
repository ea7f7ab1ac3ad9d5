package org.wadeplan.planner.pack.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.wadeplan.planner.kit.ChargingPlan;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.week.CrewDay;

/** What the crew loads, container by container, to tick by eye and hand, not from memory. */
record LoadList(
        String heading,
        List<String> shortages,
        List<Container> containers,
        List<String> weights,
        List<String> charging) {

    record Container(String name, List<Line> lines) {}

    record Line(String quantity, String label, String items, String validUntil, String forSites) {}

    boolean hasShortages() {
        return !shortages.isEmpty();
    }

    static Section section(PlanSource source, CrewDay day, Templates templates) {
        String subject = "crew " + day.crew() + " · " + source.clock().day(day.date());
        return new Section("Load list", subject, true, templates.fill("load-list", of(source, day)));
    }

    static LoadList of(PlanSource source, CrewDay day) {
        Map<String, List<Line>> byContainer = new LinkedHashMap<>();
        for (LoadLine line : source.load(day).map(CrewDayLoad::lines).orElse(List.of())) {
            byContainer
                    .computeIfAbsent(line.container(), any -> new ArrayList<>())
                    .add(line(line));
        }
        return new LoadList(
                "Load crew " + day.crew() + ", " + source.clock().day(day.date()) + ", vehicle " + day.vehicle(),
                Stream.concat(source.plan().kit().vehicles().stream(), source.plan().kit().shortages().stream())
                        .filter(shortage -> shortage.date().equals(day.date())
                                && shortage.crews().contains(day.crew()))
                        .map(LoadList::words)
                        .toList(),
                byContainer.entrySet().stream()
                        .map(entry -> new Container(entry.getKey(), entry.getValue()))
                        .toList(),
                LoadWeights.lines(source, day),
                charging(source, day));
    }

    boolean hasWeights() {
        return !weights.isEmpty();
    }

    boolean hasCharging() {
        return !charging.isEmpty();
    }

    private static List<String> charging(PlanSource source, CrewDay day) {
        List<String> used = source.load(day).map(CrewDayLoad::lines).orElse(List.of()).stream()
                .flatMap(line -> line.items().stream())
                .toList();
        return ChargingPlan.of(
                        source.round(),
                        source.plan().week().crewDays(),
                        source.plan().kit())
                .stream()
                .filter(charge -> charge.usedOn().equals(day.date()) && used.contains(charge.pack()))
                .map(charge -> charge.pack() + " on " + charge.place() + " from "
                        + source.clock().time(charge.from())
                        + charge.until()
                                .map(time -> " to " + source.clock().time(time))
                                .orElse("")
                        + (charge.change() ? " (change packs then)" : ""))
                .toList();
    }

    private static Line line(LoadLine line) {
        String unit = line.unit().isBlank() ? "" : " " + line.unit();
        return new Line(
                line.quantity() == 0 ? "none" : Figures.plain(line.quantity()) + unit,
                line.label(),
                String.join(", ", line.items()),
                line.validUntil().map(LocalDate::toString).orElse(""),
                String.join(", ", line.forSites()));
    }

    private static String words(Shortage shortage) {
        return KitWords.kind(shortage.kind()) + ": needed " + Figures.plain(shortage.needed()) + ", there are "
                + Figures.plain(shortage.available()) + ". " + sentence(shortage.reason()) + " Way out: "
                + sentence(shortage.remedy());
    }

    private static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }
}
