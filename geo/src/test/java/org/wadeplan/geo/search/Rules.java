package org.wadeplan.geo.search;

import java.util.OptionalInt;
import java.util.Set;
import org.wadeplan.geo.reach.ReachProtocol;
import org.wadeplan.geo.reach.ReachRule;

/** Search rules for tests, changed one by one. */
record Rules(
        double lengthM,
        ClearBy clearBy,
        double confluenceM,
        double lineEndM,
        SearchRules.Layout layout,
        boolean acrossLines,
        double gapM,
        SearchLimits limits,
        int best,
        OptionalInt ofGroup,
        Set<String> lines) {

    static final Rules USUAL = new Rules(
            150,
            ClearBy.ALONG,
            50,
            0,
            new SearchRules.Fitted(25),
            true,
            0,
            SearchLimits.NONE,
            100_000,
            OptionalInt.empty(),
            Set.of());

    Rules clearing(double changedM, ClearBy by) {
        return new Rules(lengthM, by, changedM, lineEndM, layout, acrossLines, gapM, limits, best, ofGroup, lines);
    }

    Rules laid(SearchRules.Layout changed, boolean across) {
        return new Rules(lengthM, clearBy, confluenceM, lineEndM, changed, across, gapM, limits, best, ofGroup, lines);
    }

    Rules lineEnds(double changedM) {
        return new Rules(
                lengthM, clearBy, confluenceM, changedM, layout, acrossLines, gapM, limits, best, ofGroup, lines);
    }

    Rules gap(double changedM) {
        return new Rules(
                lengthM, clearBy, confluenceM, lineEndM, layout, acrossLines, changedM, limits, best, ofGroup, lines);
    }

    Rules limited(SearchLimits changed) {
        return new Rules(
                lengthM, clearBy, confluenceM, lineEndM, layout, acrossLines, gapM, changed, best, ofGroup, lines);
    }

    Rules best(int changed) {
        return new Rules(
                lengthM, clearBy, confluenceM, lineEndM, layout, acrossLines, gapM, limits, changed, ofGroup, lines);
    }

    Rules ofEachGroup(int most) {
        return new Rules(
                lengthM,
                clearBy,
                confluenceM,
                lineEndM,
                layout,
                acrossLines,
                gapM,
                limits,
                best,
                OptionalInt.of(most),
                lines);
    }

    Rules only(String line) {
        return new Rules(
                lengthM,
                clearBy,
                confluenceM,
                lineEndM,
                layout,
                acrossLines,
                gapM,
                limits,
                best,
                ofGroup,
                Set.of(line));
    }

    SearchRules rules() {
        return new SearchRules(
                ReachProtocol.of(new ReachRule(lengthM, 10, "common practice")),
                clearBy,
                confluenceM,
                lineEndM,
                layout,
                acrossLines,
                gapM,
                limits,
                ScoreRules.USUAL,
                best,
                ofGroup,
                lines);
    }

    CandidateSearch search(SearchGround ground) {
        return new CandidateSearch(ground, rules(), SearchWatch.NONE);
    }
}
