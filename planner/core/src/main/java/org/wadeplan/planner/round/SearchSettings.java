package org.wadeplan.planner.round;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wadeplan.geo.search.Bounds;
import org.wadeplan.geo.search.ClearBy;
import org.wadeplan.geo.search.ScoreRules;
import org.wadeplan.geo.search.SearchLimits;
import org.wadeplan.geo.search.SearchRules;

/**
 * What a search for reaches keeps clear of and what it prefers.
 *
 * @param clearBy which of the two distances decides
 * @param clearM metres to keep clear, by kind of place: {@code confluence}, {@code line-end}, {@code tidal-limit},
 *     {@code parcel}, a kind of the barrier table, or {@code other} for any other kind
 * @param layout where reaches may start
 * @param acrossLines whether a reach may run on where one line ends and exactly one other goes on
 * @param minGapM least distance between two reaches along the network, metres
 * @param limits what a stretch may be
 * @param withoutConsent states of parcels that rule land out, in lower case
 * @param tidalRuledOut whether tidal waters are ruled out
 * @param scores what makes a candidate good
 * @param best how many candidates at most
 * @param bestOfWater how many of one water at most; empty for no limit
 * @param source where the distances come from
 */
public record SearchSettings(
        ClearBy clearBy,
        Map<String, Double> clearM,
        SearchRules.Layout layout,
        boolean acrossLines,
        double minGapM,
        SearchLimits limits,
        Set<String> withoutConsent,
        boolean tidalRuledOut,
        ScoreRules scores,
        int best,
        OptionalInt bestOfWater,
        String source) {

    /** Distance in metres for kinds of places that have none of their own. */
    public static final String OTHER = "other";

    private static final Map<String, Double> USUAL_CLEAR_M =
            Map.of("confluence", 50.0, "line-end", 0.0, "tidal-limit", 50.0, "parcel", 0.0, OTHER, 50.0);

    /** Where {@code round.json} says nothing. */
    public static final SearchSettings USUAL = new SearchSettings(
            ClearBy.ALONG,
            USUAL_CLEAR_M,
            new SearchRules.Fitted(25),
            true,
            150,
            new SearchLimits(
                    Bounds.NONE,
                    Bounds.NONE,
                    Bounds.NONE,
                    Bounds.NONE,
                    false,
                    Set.of("lake", "pipe", "culvert", "canal", "tidal", "coast")),
            Set.of("refused"),
            true,
            ScoreRules.USUAL,
            10,
            OptionalInt.empty(),
            "usual distances: 50 m or 5-10 widths from confluences and structures (common practice); edit");

    public SearchSettings {
        clearM = Collections.unmodifiableMap(new TreeMap<>(clearM));
        withoutConsent = Collections.unmodifiableSet(new TreeSet<>(withoutConsent));
    }

    /** Metres to keep clear of one kind of place. */
    public double clearM(String kind) {
        Double own = clearM.get(kind);
        return own == null ? clearM.getOrDefault(OTHER, 50.0) : own;
    }

    /** With another way of measuring distances. */
    public SearchSettings measured(ClearBy by) {
        return new SearchSettings(
                by,
                clearM,
                layout,
                acrossLines,
                minGapM,
                limits,
                withoutConsent,
                tidalRuledOut,
                scores,
                best,
                bestOfWater,
                source);
    }

    /** With another number of candidates. */
    public SearchSettings proposing(int most) {
        return new SearchSettings(
                clearBy,
                clearM,
                layout,
                acrossLines,
                minGapM,
                limits,
                withoutConsent,
                tidalRuledOut,
                scores,
                most,
                bestOfWater,
                source);
    }
}
