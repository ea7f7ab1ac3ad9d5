package org.wadeplan.planner.pack.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;
import org.wadeplan.planner.round.Round;

/** The candidates of a search on paper: an overview with the reasons for what was left out, then a page for each. */
public final class CandidatePages {

    public static final String FILE = "candidates.pdf";

    /** More pages than this nobody takes along; the files for map programs hold the rest. */
    public static final int MOST_PAGES = 20;

    private final Round round;
    private final CandidateReport report;
    private final Instant madeAt;
    private final Templates templates = new Templates();

    public CandidatePages(Round round, CandidateReport report, Instant madeAt) {
        this.round = round;
        this.report = report;
        this.madeAt = madeAt;
    }

    /** The PDF; without a candidate it is the overview alone, which says why there is none. */
    public PressedPdf press() {
        List<Section> sections = new ArrayList<>();
        sections.add(section("Candidate reaches", "overview", "candidate-overview", CandidateList.of(round, report)));
        for (ProposedReach candidate : report.candidates().subList(0, pageCount())) {
            sections.add(section(
                    "Candidate reach",
                    candidate.name() + ", " + candidate.reach().stream(),
                    "candidate-page",
                    CandidatePage.of(round, report, candidate)));
        }
        PackClock clock = new PackClock(round.header().zone());
        return new PdfPress(templates)
                .press(new Book(
                        round.header().title() + " – candidate reaches",
                        round.header().title() + " · inputs " + round.hash().brief(),
                        madeAt,
                        "made " + clock.moment(madeAt),
                        sections));
    }

    private int pageCount() {
        return Math.min(MOST_PAGES, report.candidates().size());
    }

    /** Candidates carry no mark of a permit that is awaited: nothing was asked yet, and each page says so. */
    private Section section(String title, String subject, String template, Object view) {
        return new Section(title, subject, true, templates.fill(template, view));
    }
}
