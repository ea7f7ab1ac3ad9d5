package org.wadeplan.desktop.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.search.FitCount;
import org.wadeplan.geo.search.LengthTally;
import org.wadeplan.geo.search.Reason;
import org.wadeplan.geo.search.Score;
import org.wadeplan.geo.terrain.Slope;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;
import org.wadeplan.planner.reach.RejectedStrip;

/** What stands beside the map about one candidate, or about the whole search. */
final class CandidateFacts {

    private CandidateFacts() {}

    /** Why this candidate, part by part, and what is known of it. */
    static List<Fact> of(ProposedReach candidate) {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact(
                "candidate.head",
                Words.of(
                        "candidate.headWords",
                        candidate.name(),
                        candidate.reach().stream(),
                        CandidateRow.whole(candidate.fromMouthM()),
                        CandidateRow.score(candidate.score()))));
        facts.add(fact(
                "candidate.parts",
                candidate.score().parts().stream().map(CandidateFacts::part).collect(Collectors.joining("\n"))));
        facts.add(fact(
                "candidate.length",
                candidate.sizeWords() + "; " + candidate.band().words()));
        candidate.facts().slope().ifPresent(slope -> facts.add(fact("candidate.slope", slope(slope))));
        candidate.facts().walkIn().ifPresent(walk -> facts.add(fact("candidate.walk", walk(walk))));
        facts.add(fact("candidate.land", String.join("; ", candidate.land())));
        facts.add(fact(
                "candidate.bank",
                Words.of(candidate.reach().stakeBank() == Bank.LEFT ? "candidate.left" : "candidate.right") + ": "
                        + candidate.bankWords()));
        candidate.notChecked().forEach(each -> facts.add(fact("candidate.notChecked", each)));
        facts.add(fact("candidate.caution", Words.of("candidate.cautionWords")));
        return facts;
    }

    /** Where the length of the streams went, where no candidate is chosen. */
    static List<Fact> of(CandidateReport report) {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("candidate.protocol", report.protocol()));
        facts.add(fact(
                "candidate.went",
                report.tally().shares().stream()
                                .filter(share -> share.firstM() > 0)
                                .map(CandidateFacts::share)
                                .collect(Collectors.joining("\n"))
                        + "\n" + Words.of("candidate.usable", km(report.tally().usableM()))
                        + "\n" + Words.of("candidate.total", km(report.tally().totalM()))));
        facts.add(fact(
                "candidate.ways",
                report.counts().stream().map(CandidateFacts::count).collect(Collectors.joining("\n"))));
        report.notChecked().forEach(each -> facts.add(fact("candidate.notChecked", each)));
        facts.add(fact("candidate.caution", Words.of("candidate.cautionWords")));
        return facts;
    }

    /** {@code BRN, 80 m ruled out: 31 m from the weir BRN-WEIR, at least 50 m along the stream}. */
    static String words(RejectedStrip strip) {
        return Words.of(
                "candidate.ruledOut",
                strip.stream(),
                CandidateRow.whole(strip.lengthM()),
                strip.reasons().stream().map(Reason::sentence).collect(Collectors.joining("; ")));
    }

    private static Fact fact(String key, String text) {
        return new Fact(Words.of(key), text);
    }

    private static String part(Score.Part part) {
        String points =
                part.points().isPresent() ? CandidateRow.whole(part.points().getAsDouble()) : "?";
        return Words.of("candidate.part", part.name(), points, CandidateRow.whole(part.weight()), part.found());
    }

    private static String share(LengthTally.Share share) {
        return Words.of("candidate.share", km(share.firstM()), share.group());
    }

    private static String count(FitCount count) {
        return Words.of(
                "candidate.count",
                count.clearBy().words(),
                km(count.ruledOutM()),
                count.clearReaches(),
                count.wholeReaches());
    }

    private static String slope(Slope slope) {
        if (slope instanceof Slope.Fitted fitted) {
            return Words.of(
                    "candidate.slopeWords",
                    String.format(Locale.ROOT, "%.2f", fitted.percent()),
                    CandidateRow.whole(fitted.windowM()));
        }
        return Words.of("candidate.slopeUnknown", ((Slope.Unresolved) slope).reason());
    }

    private static String walk(WalkIn walk) {
        String land = walk.acrossWithoutConsent().isEmpty()
                ? ""
                : "; " + Words.of("candidate.across", String.join(", ", walk.acrossWithoutConsent()));
        return Words.of("candidate.walkWords", CandidateRow.whole(walk.lengthM()), walk.road()) + land;
    }

    private static String km(double lengthM) {
        return String.format(Locale.ROOT, "%.2f", lengthM / 1000);
    }
}
