package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wadeplan.geo.search.ClearBy;
import org.wadeplan.geo.search.FitCount;
import org.wadeplan.geo.search.LengthTally;
import org.wadeplan.geo.search.Reason;
import org.wadeplan.geo.search.Score;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;
import org.wadeplan.planner.reach.RejectedStrip;
import org.wadeplan.planner.reach.SiteAdvice;
import org.wadeplan.planner.round.Round;

/** A search's report as lines of text. */
final class CandidateText {

    private final Round round;
    private final CandidateReport report;

    CandidateText(Round round, CandidateReport report) {
        this.round = round;
        this.report = report;
    }

    List<String> lines(boolean everyRejected) {
        List<String> text = new ArrayList<>();
        text.add(round.terrain().crs().words());
        text.add("Reaches: " + report.protocol() + ". Distances kept "
                + report.settings().clearBy().words()
                + report.stream().map(code -> ". Stream " + code + " only").orElse("") + ".");
        report.site().ifPresent(advice -> text.addAll(site(advice)));
        text.addAll(candidates());
        text.addAll(lengths());
        text.addAll(bothWays());
        report.notChecked().forEach(each -> text.add(capital(each) + "."));
        if (everyRejected) {
            text.addAll(rejected());
        }
        text.add("Nothing here says that a place is safe or open to you: walk it, and ask, before anyone works there.");
        return text;
    }

    private List<String> site(SiteAdvice advice) {
        List<String> text = new ArrayList<>();
        text.add("");
        text.add("Site " + advice.site() + " on " + advice.stream() + ", start E "
                + number(advice.start().eastM(), 0) + " N "
                + number(advice.start().northM(), 0) + ":");
        advice.inTheWay().forEach(reason -> text.addAll(TextTable.hanging("  in the way: ", reason.sentence())));
        advice.advice().forEach(way -> text.addAll(TextTable.hanging("  -> ", way)));
        advice.moves()
                .forEach(move -> text.add("     new start E "
                        + number(move.start().eastM(), 0) + " N "
                        + number(move.start().northM(), 0) + ", " + (move.moveM() > 0 ? "upstream" : "downstream")));
        text.addAll(TextTable.hanging("  room: ", advice.room()));
        passed("passed on the way up", advice.passedUpstream(), text);
        passed("passed on the way down", advice.passedDownstream(), text);
        text.add("");
        return text;
    }

    private static void passed(String way, List<RejectedStrip> strips, List<String> text) {
        for (RejectedStrip strip : strips) {
            text.addAll(TextTable.hanging(
                    "  " + way + ": ",
                    number(strip.lengthM(), 0) + " m from " + number(strip.fromMouthM(), 0) + " m above the mouth: "
                            + sentences(strip)));
        }
    }

    private List<String> candidates() {
        if (report.candidates().isEmpty()) {
            return List.of(
                    report.complete()
                            ? "No candidate: nothing that is left holds a reach. The lengths below say why."
                            : "The search was stopped before it was done.");
        }
        TextTable table =
                new TextTable("rank", "name", "stream", "from_mouth_m", "east_m", "north_m", "score", "why and where");
        for (ProposedReach proposed : report.candidates()) {
            table.row(
                    Integer.toString(proposed.rank()),
                    proposed.name(),
                    proposed.reach().stream(),
                    number(proposed.fromMouthM(), 1),
                    number(proposed.reach().start().at().eastM(), 1),
                    number(proposed.reach().start().at().northM(), 1),
                    score(proposed.score()),
                    why(proposed));
        }
        List<String> text = new ArrayList<>(table.lines());
        text.add("from_mouth_m: start of the reach above the mouth of its line. Stakes ± "
                + number(round.header().stakeUncertaintyM(), 0) + " m by handheld. Score: 0 to 100; what is not known"
                + " (?) counts half, and the range in brackets says what it could change. Weights: "
                + report.settings().scores().source() + ".");
        return text;
    }

    private static String score(Score score) {
        String band = score.highest() > score.lowest()
                ? " (" + number(score.lowest(), 0) + "-" + number(score.highest(), 0) + ")"
                : "";
        return number(score.points(), 1) + band;
    }

    private static String why(ProposedReach proposed) {
        List<String> words = new ArrayList<>();
        proposed.score().parts().forEach(part -> words.add(part(part)));
        words.addAll(proposed.land());
        words.addAll(proposed.notChecked());
        return String.join("; ", words);
    }

    private static String part(Score.Part part) {
        String points = part.points().isPresent() ? number(part.points().getAsDouble(), 0) : "?";
        return part.name() + " " + points + "/" + number(part.weight(), 0) + " (" + part.found() + ")";
    }

    private List<String> lengths() {
        LengthTally tally = report.tally();
        TextTable table = new TextTable("km first reason", "km any reason", "why no reach fits");
        for (LengthTally.Share share : tally.shares()) {
            table.row(km(share.firstM()), km(share.anyM()), share.group());
        }
        table.row(km(tally.usableM()), "", "left: a reach fits");
        table.row(km(tally.totalM()), "", "searched in all; the first column adds up to it");
        List<String> text = new ArrayList<>();
        text.add("");
        text.addAll(table.lines());
        return text;
    }

    private List<String> bothWays() {
        List<String> text = new ArrayList<>();
        FitCount straight = report.counts().get(0);
        FitCount along = report.counts().get(1);
        text.addAll(TextTable.hanging(
                "Distances ",
                String.format(
                                Locale.ROOT,
                                "%s: %.1f km ruled out, %d of %d reaches laid end to end stay clear; %s: %.1f km, %d.",
                                ClearBy.STRAIGHT.words(),
                                straight.ruledOutM() / 1000,
                                straight.clearReaches(),
                                straight.wholeReaches(),
                                ClearBy.ALONG.words(),
                                along.ruledOutM() / 1000,
                                along.clearReaches())
                        + " Straight also keeps clear of places on a neighbouring stream and rules out more of a winding"
                        + " one; along the stream counts the water that fish, flow and crews follow."));
        return text;
    }

    private List<String> rejected() {
        TextTable table = new TextTable("stream", "from_mouth_m", "length_m", "reasons");
        for (RejectedStrip strip : report.rejected()) {
            table.row(strip.stream(), number(strip.fromMouthM(), 1), number(strip.lengthM(), 1), sentences(strip));
        }
        List<String> text = new ArrayList<>();
        text.add("");
        text.addAll(table.lines());
        return text;
    }

    private static String sentences(RejectedStrip strip) {
        return strip.reasons().stream().map(Reason::sentence).collect(Collectors.joining("; "));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String km(double lengthM) {
        return number(lengthM / 1000, 2);
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
