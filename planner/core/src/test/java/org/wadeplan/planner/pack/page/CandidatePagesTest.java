package org.wadeplan.planner.pack.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;
import org.wadeplan.planner.reach.RoundSearch;
import org.wadeplan.planner.reach.SearchRequest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.SearchSettings;

class CandidatePagesTest {

    private static final Instant MADE = Instant.parse("2027-09-03T16:00:00Z");
    private static final Round ROUND = DemoRound.resolved();
    private static final CandidateReport REPORT =
            RoundSearch.search(ROUND, SearchRequest.all(SearchSettings.USUAL.proposing(3)), SearchWatch.NONE);

    @Test
    void printsAnOverviewAndOnePageForEachCandidate() throws IOException {
        PressedPdf pdf = new CandidatePages(ROUND, REPORT, MADE).press();
        String text = text(pdf);

        assertThat(REPORT.candidates()).hasSize(3);
        for (ProposedReach candidate : REPORT.candidates()) {
            assertThat(text).contains(candidate.name() + " on " + candidate.reach().stream() + ", score ");
            assertThat(text).contains(candidate.reach().end().name());
        }
        assertThat(text)
                .contains("Nobody has walked them, asked the owner or a permit, or judged them safe.")
                .contains("searched in all");
    }

    @Test
    void givesTheSameBytesForTheSameSearch() {
        assertThat(new CandidatePages(ROUND, REPORT, MADE).press().bytes())
                .isEqualTo(new CandidatePages(ROUND, REPORT, MADE).press().bytes());
    }

    @Test
    void saysWhyThereIsNoCandidateWhereThereIsNone() throws IOException {
        SearchSettings none = SearchSettings.USUAL.proposing(0);
        CandidateReport empty = RoundSearch.search(ROUND, SearchRequest.all(none), SearchWatch.NONE);

        assertThat(text(new CandidatePages(ROUND, empty, MADE).press())).contains("No candidate");
    }

    private static String text(PressedPdf pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
