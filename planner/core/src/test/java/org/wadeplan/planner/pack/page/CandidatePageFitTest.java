package org.wadeplan.planner.pack.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.RoundSearch;
import org.wadeplan.planner.reach.SearchRequest;
import org.wadeplan.planner.round.Round;

/** A candidate is one sheet to take along: on the demo round none runs over to a second page. */
class CandidatePageFitTest {

    @Test
    void everyCandidateOfTheDemoRoundFitsOnOnePage() {
        Round round = DemoRound.resolved();
        CandidateReport report =
                RoundSearch.search(round, SearchRequest.all(round.header().search()), SearchWatch.NONE);
        int candidates = report.candidates().size();

        int pages = new CandidatePages(round, report, Instant.EPOCH).press().pages();

        assertThat(candidates).isEqualTo(10);
        assertThat(pages).as("an overview of one or two pages, then one each").isBetween(11, 12);
    }
}
