package org.wadeplan.planner.reach;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.search.FitCount;
import org.wadeplan.geo.search.LengthTally;
import org.wadeplan.planner.round.SearchSettings;

/**
 * Everything that a search found, for the terminal, the window, files and paper.
 *
 * @param round id of the round
 * @param protocol length and pieces of a reach, in words
 * @param settings what was asked for
 * @param stream the one stream that was searched; empty for all
 * @param complete false where the search was cancelled
 * @param candidates best first; empty is an answer, see the tally
 * @param startsTried how many places for a start were scored
 * @param tally where the length of the streams went
 * @param counts straight and along the stream side by side
 * @param rejected every rejected stretch; empty where not asked for
 * @param site the one site that was judged; empty where none was named
 * @param notChecked limits that could not be checked, in words
 * @param problems what was noticed, worst first
 */
public record CandidateReport(
        String round,
        String protocol,
        SearchSettings settings,
        Optional<String> stream,
        boolean complete,
        List<ProposedReach> candidates,
        int startsTried,
        LengthTally tally,
        List<FitCount> counts,
        List<RejectedStrip> rejected,
        Optional<SiteAdvice> site,
        List<String> notChecked,
        List<Problem> problems) {

    public CandidateReport {
        candidates = List.copyOf(candidates);
        counts = List.copyOf(counts);
        rejected = List.copyOf(rejected);
        notChecked = List.copyOf(notChecked);
        problems = List.copyOf(problems);
    }
}
