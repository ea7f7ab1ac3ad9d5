package org.wadeplan.cli;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.ledger.LaneMoment;
import org.wadeplan.planner.decon.ledger.LedgerReport;
import org.wadeplan.planner.decon.ledger.LedgerReport.LaneReport;
import org.wadeplan.planner.decon.ledger.StateSpan;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.round.Round;

/** The exposure ledger as lines of text. */
final class ExposureText {

    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE dd HH:mm", Locale.ENGLISH);

    private final Round round;
    private final boolean itemsInFull;

    /** @param itemsInFull whether items outside kit sets are shown state by state too */
    ExposureText(Round round, boolean itemsInFull) {
        this.round = round;
        this.itemsInFull = itemsInFull;
    }

    List<String> lines(LedgerReport report) {
        List<String> text = new ArrayList<>(TextTable.hanging(
                "",
                "What the kit touches, by " + report.week() + "; times in "
                        + round.header().zone()));
        text.add("");
        if (report.at().isPresent()) {
            text.addAll(moment(report, report.at().get()));
        } else {
            text.addAll(lanes(report));
        }
        text.add("");
        text.addAll(TextTable.hanging(
                "",
                "The ledger says what is on file or planned. Drying estimates come from the forecast and from guessed loads of"
                        + " water; they clear nothing. Nothing here releases anything: a person looks, and signs the"
                        + " sheet. Planned releases hold only where the cleaning is done as planned."));
        return text;
    }

    private List<String> lanes(LedgerReport report) {
        TextTable table = new TextTable("kit", "from", "until", "state", "what");
        for (LaneReport lane : report.lanes()) {
            if (!lane.item() || itemsInFull) {
                for (StateSpan span : lane.states()) {
                    table.row(
                            lane.id(),
                            clock(span.from()),
                            span.until().map(this::clock).orElse("-"),
                            span.state().word(),
                            span.why()
                                    + dry(lane, span.from())
                                    + span.breach()
                                            .map(breach -> " (AGAINST THE RULES: " + breach + ")")
                                            .orElse(""));
                }
            }
        }
        List<String> text = new ArrayList<>(table.lines());
        List<LaneReport> items = report.lanes().stream()
                .filter(lane -> lane.item() && !itemsInFull)
                .toList();
        if (!items.isEmpty()) {
            text.add("");
            text.addAll(items(items));
        }
        return text;
    }

    private List<String> items(List<LaneReport> items) {
        TextTable table =
                new TextTable("item", "what", "pieces", "touches, and > where it is cleaned with its kit set");
        for (LaneReport lane : items) {
            table.row(lane.id(), lane.label(), Integer.toString(lane.pieces()), course(lane));
        }
        List<String> text = new ArrayList<>();
        text.add("Items outside kit sets (--kit-set ITEM shows one state by state)");
        text.addAll(table.lines());
        return text;
    }

    /** {@code BRN Mon 06 08:30, BRN Mon 06 13:55 > TOL ...}: each touch, and a mark for each treatment that counts. */
    private String course(LaneReport lane) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < lane.touches().size(); i++) {
            Touch touch = lane.touches().get(i);
            Optional<Instant> next = i + 1 < lane.touches().size()
                    ? Optional.of(lane.touches().get(i + 1).from())
                    : Optional.empty();
            boolean cleaned = lane.treated().stream()
                    .anyMatch(treated -> !treated.credits().isEmpty()
                            && !treated.start().isBefore(touch.until())
                            && next.filter(start -> !treated.start().isBefore(start))
                                    .isEmpty());
            words.add(touch.water() + " "
                    + (touch.beforeTheRound() ? "before the round" : clock(touch.from()))
                    + (cleaned ? " >" : next.isPresent() ? "," : ""));
        }
        return String.join(" ", words);
    }

    private List<String> moment(LedgerReport report, Instant at) {
        TextTable table = new TextTable(
                "kit", "state", "since", "exposed to", "wet since", "dry, estimate", "released", "may go into");
        for (LaneReport lane : report.lanes()) {
            lane.moment().ifPresent(moment -> row(table, lane, moment));
        }
        List<String> text = new ArrayList<>();
        text.add("At " + clock(at));
        text.addAll(table.lines());
        return text;
    }

    private void row(TextTable table, LaneReport lane, LaneMoment moment) {
        table.row(
                moment.id(),
                moment.state().word(),
                clock(moment.since()),
                moment.exposedTo().isEmpty() ? "-" : String.join(" ", moment.exposedTo()),
                moment.wetSince().map(this::clock).orElse("-"),
                lane.drying().stream()
                        .map(drying ->
                                drying.estimate().about().map(this::clock).orElse("not known"))
                        .findFirst()
                        .orElse("-"),
                moment.released().map(this::clock).orElse("-"),
                moment.releasedFor().isEmpty()
                        ? "nowhere yet"
                        : moment.releasedFor().stream().collect(Collectors.joining(" ")));
    }

    /** The estimate for a stretch of drying that begins then, with what it rests on. */
    private String dry(LaneReport lane, Instant from) {
        return lane.drying().stream()
                .filter(drying -> drying.wetUntil().equals(from))
                .map(drying -> "; dry to the touch, ESTIMATE: "
                        + drying.estimate()
                                .about()
                                .map(about -> "about " + clock(about))
                                .orElse("not known, " + drying.estimate().why())
                        + " (" + drying.estimate().slowest() + ")")
                .findFirst()
                .orElse("");
    }

    private String clock(Instant time) {
        return DAY_TIME.format(time.atZone(round.header().zone()));
    }
}
