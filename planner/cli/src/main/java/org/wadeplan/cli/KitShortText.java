package org.wadeplan.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.kit.ShortageSummary;
import org.wadeplan.planner.kit.SpareNote;
import org.wadeplan.planner.kit.wayout.ShortageWays;
import org.wadeplan.planner.kit.wayout.WayOut;
import org.wadeplan.planner.kit.wayout.WaysOut;

/** What is short in a week and the ways out, as lines of text. */
final class KitShortText {

    private final KitReport report;
    private final List<String> text = new ArrayList<>();

    private KitShortText(KitReport report) {
        this.report = report;
    }

    static List<String> of(KitReport report) {
        KitShortText text = new KitShortText(report);
        text.summary();
        text.byKind();
        text.vehicles();
        text.spares();
        return text.text;
    }

    private void summary() {
        if (report.shortages().isEmpty()) {
            text.add("Nothing is short on any day of this week.");
            text.add("");
            return;
        }
        text.add("Short");
        TextTable table = new TextTable("kind", "days", "need", "have", "short by");
        for (ShortageSummary shortage : report.shortages()) {
            table.row(
                    KitWords.kind(shortage.kind()),
                    KitWords.days(shortage.days()),
                    Quantity.words(shortage.needed(), shortage.unit()),
                    Quantity.words(shortage.available(), shortage.unit()),
                    Quantity.words(shortage.shortBy(), shortage.unit()));
        }
        text.addAll(table.lines());
        text.add("");
    }

    private void byKind() {
        for (ShortageWays one : report.waysOut()) {
            text.add(KitWords.kind(one.shortage().kind()));
            reasons(one.shortage());
            one.ways().forEach(this::way);
            text.add("");
        }
    }

    /** Each reason once, with its days. */
    private void reasons(ShortageSummary shortage) {
        List<Shortage> all = report.kit().shortages().stream()
                .filter(one -> one.kind().equals(shortage.kind()))
                .toList();
        List<String> said = new ArrayList<>();
        for (Shortage one : all) {
            if (!said.contains(one.reason())) {
                said.add(one.reason());
                List<LocalDate> days = all.stream()
                        .filter(other -> other.reason().equals(one.reason()))
                        .map(Shortage::date)
                        .toList();
                text.addAll(TextTable.hanging("  " + KitWords.days(days) + ": ", one.reason()));
            }
        }
    }

    private void way(WayOut way) {
        String mark =
                switch (way.result()) {
                    case OPEN -> "  way out (" + way.cost().words() + "): ";
                    case PARTLY -> "  helps in part (" + way.cost().words() + "): ";
                    case REFUSED -> "  not a way out: ";
                };
        text.addAll(TextTable.hanging(mark, way.what() + ". Tried: " + way.found() + "."));
    }

    private void vehicles() {
        for (WaysOut.VehicleFinding one : report.vehicles()) {
            text.add("Vehicle of crew " + String.join(", ", one.finding().crews()) + " on "
                    + KitWords.day(one.finding().date()));
            text.addAll(TextTable.hanging("  why: ", one.finding().reason()));
            one.ways().forEach(this::way);
            text.add("");
        }
    }

    private void spares() {
        for (SpareNote note : report.kit().spares()) {
            String found = note.found().isBlank() ? "" : ": " + note.found();
            text.addAll(TextTable.hanging(
                    "note: ",
                    KitWords.kind(note.kind()) + ": enough, " + note.inService() + " in service, no spare on "
                            + KitWords.days(note.days()) + found));
        }
        if (!report.kit().spares().isEmpty()) {
            text.add("");
        }
    }
}
