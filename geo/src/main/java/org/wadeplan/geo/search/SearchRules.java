package org.wadeplan.geo.search;

import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.geo.reach.ReachProtocol;

/**
 * What to search for.
 *
 * @param protocol length and pieces of a reach
 * @param clearBy which of the two distances decides
 * @param confluenceClearM how far to keep clear of confluences, metres
 * @param lineEndClearM how far to keep clear of ends where a line just stops, metres
 * @param layout where reaches may start
 * @param acrossLines whether a reach may run on where one line ends and exactly one other goes on
 * @param minGapM least distance between two reaches along the network, metres
 * @param limits what a stretch may be
 * @param scores what makes a candidate good
 * @param best how many candidates to propose at most
 * @param bestOfGroup how many of one group (water or catchment) at most; empty for as many as come
 * @param onlyLines ids of the lines to search; empty for all
 */
public record SearchRules(
        ReachProtocol protocol,
        ClearBy clearBy,
        double confluenceClearM,
        double lineEndClearM,
        Layout layout,
        boolean acrossLines,
        double minGapM,
        SearchLimits limits,
        ScoreRules scores,
        int best,
        OptionalInt bestOfGroup,
        Set<String> onlyLines) {

    public SearchRules {
        if (!(confluenceClearM >= 0 && lineEndClearM >= 0 && minGapM >= 0) || best < 0) {
            throw new IllegalArgumentException("Distances and counts are 0 or more");
        }
        onlyLines = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(onlyLines));
    }

    /** Where reaches may start. */
    public sealed interface Layout {}

    /**
     * Anywhere in what is left, every so many metres from the downstream end of each free stretch, and at its upper end.
     *
     * @param stepM above 0, metres
     */
    public record Fitted(double stepM) implements Layout {

        public Fitted {
            if (!(stepM > 0)) {
                throw new IllegalArgumentException("A step is above 0 m, not " + stepM);
            }
        }
    }

    /** End to end from the downstream end of each run; those that touch what is ruled out are dropped. */
    public record EndToEnd() implements Layout {}
}
