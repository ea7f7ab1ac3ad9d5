package org.wadeplan.planner.reach;

import java.util.Optional;
import org.wadeplan.planner.round.SearchSettings;

/**
 * What to search for this time.
 *
 * @param settings distances, limits, weights
 * @param stream code of the one stream to search; empty for all
 * @param site the site whose start is to be judged; its own reach does not count as taken
 * @param withRejected whether every rejected stretch is wanted, and not only sums
 */
public record SearchRequest(
        SearchSettings settings, Optional<String> stream, Optional<String> site, boolean withRejected) {

    /** All streams, with everything. */
    public static SearchRequest all(SearchSettings settings) {
        return new SearchRequest(settings, Optional.empty(), Optional.empty(), true);
    }
}
