package org.wadeplan.geo.search;

import java.util.List;

/**
 * What a search found.
 *
 * @param complete false where it was cancelled: then there is nothing but what was done so far
 * @param candidates best first; empty is an answer, see the tally
 * @param startsTried how many places for a start were scored
 * @param tally where the length went, by the way of measuring that was asked for
 * @param counts by both ways of measuring, straight first
 * @param notChecked limits that could not be checked, in words
 */
public record SearchResult(
        boolean complete,
        List<Candidate> candidates,
        int startsTried,
        LengthTally tally,
        List<FitCount> counts,
        List<String> notChecked) {

    public SearchResult {
        candidates = List.copyOf(candidates);
        counts = List.copyOf(counts);
        notChecked = List.copyOf(notChecked);
    }
}
