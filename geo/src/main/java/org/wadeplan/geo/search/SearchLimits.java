package org.wadeplan.geo.search;

import java.util.Set;
import java.util.TreeSet;

/**
 * What a stretch may be. A limit on a figure that nobody knows rules nothing out and is named as not checked.
 *
 * @param order Strahler order
 * @param widthM mean wetted width, metres
 * @param slopePercent fall in percent
 * @param walkInM longest way on foot, metres
 * @param walkInOnConsentedLand whether a way across a parcel without consent rules out
 * @param lineKindsRuledOut kinds of lines that are no stream, in the file's own words, compared without case
 */
public record SearchLimits(
        Bounds order,
        Bounds widthM,
        Bounds slopePercent,
        Bounds walkInM,
        boolean walkInOnConsentedLand,
        Set<String> lineKindsRuledOut) {

    public static final SearchLimits NONE =
            new SearchLimits(Bounds.NONE, Bounds.NONE, Bounds.NONE, Bounds.NONE, false, Set.of());

    public SearchLimits {
        TreeSet<String> kinds = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        kinds.addAll(lineKindsRuledOut);
        lineKindsRuledOut = java.util.Collections.unmodifiableSet(kinds);
    }
}
