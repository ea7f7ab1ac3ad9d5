package org.wadeplan.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.DayWeights;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.kit.PackCharge;
import org.wadeplan.planner.kit.StockLine;
import org.wadeplan.planner.kit.StoreDefect;
import org.wadeplan.planner.kit.WeightCheck;
import org.wadeplan.planner.round.LoadTick;

/** Loads by day, with ticks and weights, and what goes with them: stock, charging, what stays in. */
final class KitLoadText {

    private final KitReport report;
    private final ZoneId zone;
    private final List<String> text = new ArrayList<>();

    private KitLoadText(KitReport report, ZoneId zone) {
        this.report = report;
        this.zone = zone;
    }

    static List<String> of(KitReport report, ZoneId zone) {
        KitLoadText text = new KitLoadText(report, zone);
        report.kit().loads().forEach(text::load);
        text.carryNote();
        text.stock();
        text.charging();
        text.notTaken();
        return text.text;
    }

    private void load(CrewDayLoad load) {
        text.add("Crew " + load.crew() + ", " + load.date());
        TextTable table = new TextTable("in", "container", "what", "quantity", "serials", "valid to", "for");
        for (LoadLine line : load.lines()) {
            table.row(
                    ticked(load, line),
                    line.container(),
                    line.label(),
                    Quantity.words(line.quantity(), line.unit()),
                    String.join(" ", line.items()),
                    line.validUntil().map(LocalDate::toString).orElse("-"),
                    String.join(" ", line.forSites()));
        }
        text.addAll(table.lines());
        report.weights().stream()
                .filter(day -> day.crew().equals(load.crew()) && day.date().equals(load.date()))
                .forEach(this::weights);
        report.ticks().stream()
                .filter(tick -> of(tick, load) && tick.overrideBy().isPresent())
                .forEach(this::override);
        text.add("");
    }

    /** How many of the line's serials are in. */
    private String ticked(CrewDayLoad load, LoadLine line) {
        long in = line.items().stream()
                .filter(item -> report.ticks().stream()
                        .anyMatch(tick -> of(tick, load) && tick.item().equals(item)))
                .count();
        return in == 0
                ? "[ ]"
                : in == line.items().size()
                        ? "[x]"
                        : "[" + in + "/" + line.items().size() + "]";
    }

    private static boolean of(LoadTick tick, CrewDayLoad load) {
        return tick.crew().equals(load.crew()) && tick.date().equals(load.date());
    }

    private void override(LoadTick tick) {
        text.addAll(TextTable.hanging(
                "  let go: ",
                tick.item() + " by " + tick.overrideBy().orElse("") + ": "
                        + tick.overrideReason().orElse("")));
    }

    private void weights(DayWeights day) {
        String payload = day.payloadKg().isPresent()
                ? (day.overPayload() ? ", OVER the payload of " : " of a payload of ")
                        + whole(day.payloadKg().getAsDouble()) + " kg"
                : "; the payload of " + day.vehicle() + " is not in the store";
        text.addAll(TextTable.hanging(
                "  weight: ",
                "gear " + whole(day.gear().kg()) + " kg and people " + whole(day.peopleKg()) + " kg in " + day.vehicle()
                        + ": " + whole(day.totalKg()) + " kg" + payload + notWeighed(day.gear())));
        for (DayWeights.Walk walk : day.walks()) {
            String far = walk.walkInM().isPresent()
                    ? whole(walk.walkInM().getAsDouble()) + " m to walk"
                    : "walk-in not known";
            String heavy = walk.heavy() ? ", heavy" : "";
            text.addAll(TextTable.hanging(
                    "  carry:  ",
                    walk.site() + ", " + far + ": " + whole(walk.gear().kg()) + " kg, " + whole(walk.perPersonKg())
                            + " kg for each of " + walk.people() + heavy));
        }
    }

    private void carryNote() {
        if (report.weights().stream().flatMap(day -> day.walks().stream()).anyMatch(DayWeights.Walk::heavy)) {
            text.addAll(TextTable.hanging(
                    "Heavy: ",
                    "more than " + whole(WeightCheck.LOOK_CLOSER_KG)
                            + " kg for each. Walk twice, take less or use a carrier; carries beyond about "
                            + whole(WeightCheck.CARRY_M)
                            + " m, steep banks and the dark need a look of their own. The figure is where guidance on"
                            + " manual handling starts to look closer (HSE INDG143, from memory); it is no limit, and your"
                            + " agency's rule comes first. Shares are even; the heaviest single thing is not."));
            text.add("");
        }
    }

    private static String notWeighed(DayWeights.Weighed gear) {
        return gear.notWeighed().isEmpty() ? "" : "; not weighed: " + String.join(", ", gear.notWeighed());
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    private void stock() {
        if (report.kit().stock().isEmpty()) {
            return;
        }
        text.add("What is used up");
        TextTable table = new TextTable(
                "kind", "start", "used (asked where there was too little)", "left", "expires", "not counted");
        for (StockLine line : report.kit().stock()) {
            table.row(
                    KitWords.kind(line.kind()),
                    Quantity.words(line.start(), line.unit()),
                    line.days().stream().map(KitLoadText::day).collect(Collectors.joining(", ")),
                    Quantity.words(line.days().get(line.days().size() - 1).left(), line.unit()),
                    line.expires().map(LocalDate::toString).orElse("-"),
                    String.join("; ", line.notCounted()));
        }
        text.addAll(table.lines());
        text.add("");
    }

    private static String day(StockLine.StockDay day) {
        String asked = day.asked() - day.used() > 1e-9 ? " (" + KitWords.number(day.asked()) + ")" : "";
        return KitWords.days(List.of(day.date())) + " " + KitWords.number(day.used()) + asked;
    }

    private void charging() {
        if (report.charging().isEmpty()) {
            return;
        }
        text.add("Charging");
        TextTable table = new TextTable("charger", "pack", "on at", "full at", "loaded again", "note");
        for (PackCharge charge : report.charging()) {
            table.row(
                    charge.place(),
                    charge.pack(),
                    KitWords.moment(charge.from(), zone),
                    charge.until().map(time -> KitWords.moment(time, zone)).orElse("not known"),
                    charge.needed().map(time -> KitWords.moment(time, zone)).orElse("-"),
                    charge.late()
                            ? "NOT FULL when it is loaded again"
                            : charge.change() ? "somebody changes packs at that time" : "");
        }
        text.addAll(table.lines());
        text.add("");
    }

    private void notTaken() {
        if (report.notTaken().isEmpty()) {
            return;
        }
        text.add("In the store, and not to be taken on some or all days");
        TextTable table = new TextTable("item", "what", "found", "tag");
        for (StoreDefect defect : report.notTaken()) {
            table.row(defect.item(), defect.label(), defect.found(), defect.tag());
        }
        text.addAll(table.lines());
    }
}
