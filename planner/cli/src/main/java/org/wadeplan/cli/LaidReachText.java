package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.LengthBand;
import org.wadeplan.geo.reach.PastStartDrift;
import org.wadeplan.planner.reach.LaidReaches;
import org.wadeplan.planner.reach.SitePastStart;
import org.wadeplan.planner.round.Round;

/** How long the reaches of a round are on the ground, and where past visits started, as lines of text. */
final class LaidReachText {

    private final Round round;
    private final LaidReaches laid;

    LaidReachText(Round round, LaidReaches laid) {
        this.round = round;
        this.laid = laid;
    }

    List<String> lines() {
        List<String> text = new ArrayList<>();
        if (!laid.lengths().isEmpty()) {
            text.add("");
            text.addAll(lengths());
        }
        if (!laid.pastStarts().isEmpty()) {
            text.add("");
            text.addAll(pastStarts());
        }
        return text;
    }

    private List<String> lengths() {
        TextTable table =
                new TextTable("site", "mapped_m", "ground_m", "vertex_every_m", "sinuosity", "width it rests on");
        for (LaidReaches.GroundBand each : laid.lengths()) {
            LengthBand band = each.band();
            table.row(
                    each.site(),
                    number(band.mappedM(), 0),
                    number(band.lowM(), 0) + "-" + number(band.highM(), 0),
                    number(band.shape().vertexSpacingM(), 1),
                    number(band.shape().sinuosity(), 2),
                    each.width().map(width -> width.words()).orElse("not known: the widest band"));
        }
        List<String> text = new ArrayList<>(table.lines());
        text.addAll(TextTable.wrapped(
                "Length, vertices and sinuosity are measured on the line. Assumed: mapped lines fall short of channels by"
                        + " 11.1 % on average (SD 4.1 %: nafm.10793), by two SD more where vertices are too far apart to"
                        + " show bends of 11 widths. Lay reaches out by tape.",
                120));
        return text;
    }

    private List<String> pastStarts() {
        TextTable table = new TextTable("site", "visit", "part", "along_m", "off_m", "side", "beyond the limit");
        for (SitePastStart start : laid.pastStarts()) {
            PastStartDrift drift = start.drift();
            table.row(
                    start.site(),
                    start.date().toString(),
                    start.part().name().toLowerCase(Locale.ROOT),
                    String.format(Locale.ROOT, "%+.1f", drift.alongM()),
                    number(drift.offM(), 1),
                    drift.offM() < 0.05 ? "on it" : "true " + (drift.side() == Bank.LEFT ? "left" : "right"),
                    drift.beyondLimit() ? "YES" : "-");
        }
        List<String> text = new ArrayList<>(table.lines());
        text.add("Past starts seen from today's: along_m + upstream, - downstream; off_m off the line. Limit "
                + number(round.header().reach().driftLimitM(), 0) + " m.");
        return text;
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
