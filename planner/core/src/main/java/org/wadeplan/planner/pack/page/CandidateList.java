package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.wadeplan.geo.search.FitCount;
import org.wadeplan.geo.search.LengthTally;
import org.wadeplan.geo.search.Score;
import org.wadeplan.planner.pack.map.CandidateOverview;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;
import org.wadeplan.planner.round.Round;

/** The overview of a search: where the candidates lie, how they score, and where the rest of the length went. */
record CandidateList(
        String heading,
        List<Fact> facts,
        String drawing,
        String system,
        boolean hasCandidates,
        List<String> parts,
        List<Row> candidates,
        String weights,
        List<Loss> losses,
        String usable,
        String total,
        String bothWays,
        List<String> notChecked) {

    record Row(
            String name,
            String stream,
            String fromMouth,
            String east,
            String north,
            String score,
            List<String> points) {}

    record Loss(String group, String firstKm, String anyKm) {}

    static CandidateList of(Round round, CandidateReport report) {
        return new CandidateList(
                round.header().title() + ": candidate reaches",
                facts(report),
                CandidateOverview.of(
                                round.terrain(),
                                report.candidates().stream()
                                        .map(ProposedReach::reach)
                                        .toList(),
                                round.sites())
                        .html(),
                round.terrain().crs().words(),
                !report.candidates().isEmpty(),
                report.candidates().stream()
                        .limit(1)
                        .flatMap(candidate -> candidate.score().parts().stream())
                        .map(Score.Part::name)
                        .toList(),
                report.candidates().stream().map(CandidateList::row).toList(),
                report.settings().scores().source(),
                report.tally().shares().stream().map(CandidateList::loss).toList(),
                km(report.tally().usableM()),
                km(report.tally().totalM()),
                bothWays(report.counts()),
                report.notChecked().stream().map(Figures::capital).toList());
    }

    private static List<Fact> facts(CandidateReport report) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Reaches", report.protocol()));
        facts.add(new Fact(
                "Kept clear", "distances " + report.settings().clearBy().words() + ": " + distances(report)));
        facts.add(new Fact("Source", report.settings().source()));
        report.stream().ifPresent(code -> facts.add(new Fact("Searched", "stream " + code + " only")));
        if (!report.complete()) {
            facts.add(new Fact("Stopped", "the search was stopped before it was done: this is not everything"));
        }
        return facts;
    }

    private static String distances(CandidateReport report) {
        return report.settings().clearM().entrySet().stream()
                .map(entry -> entry.getKey() + " " + Figures.plain(entry.getValue()) + " m")
                .collect(Collectors.joining(", "));
    }

    private static Row row(ProposedReach candidate) {
        return new Row(
                candidate.name(),
                candidate.reach().stream(),
                whole(candidate.fromMouthM()),
                whole(candidate.reach().start().at().eastM()),
                whole(candidate.reach().start().at().northM()),
                score(candidate.score()),
                candidate.score().parts().stream().map(CandidateList::points).toList());
    }

    /** {@code 81 (75–87)}: the range is what the parts that nobody knows could change. */
    static String score(Score score) {
        return score.highest() > score.lowest()
                ? whole(score.points()) + " (" + whole(score.lowest()) + "–" + whole(score.highest()) + ")"
                : whole(score.points());
    }

    static String points(Score.Part part) {
        return (part.points().isPresent() ? whole(part.points().getAsDouble()) : "?") + "/" + whole(part.weight());
    }

    private static Loss loss(LengthTally.Share share) {
        return new Loss(share.group(), km(share.firstM()), km(share.anyM()));
    }

    private static String bothWays(List<FitCount> counts) {
        return counts.stream()
                .map(count -> String.format(
                        Locale.ROOT,
                        "%s: %s km ruled out, %d of %d reaches laid end to end stay clear",
                        count.clearBy().words(),
                        km(count.ruledOutM()),
                        count.clearReaches(),
                        count.wholeReaches()))
                .collect(Collectors.joining("; "));
    }

    private static String km(double lengthM) {
        return String.format(Locale.ROOT, "%.2f", lengthM / 1000);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
