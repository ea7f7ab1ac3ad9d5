package org.wadeplan.planner.pack.page;

/** Fits a briefing on one side with the signatures of the crew; what is not read aloud goes behind it. */
record BriefingSheet(PlanSource source, SiteDay visit, BriefingGroup group, Templates templates, PdfPress press) {

    /**
     * The sheet. Where the words do not fit, details of the lowest hazards are read from the back; names stay in front, and
     * so does everything about a limit that the plan breaches and about what is new.
     */
    Section section() {
        BriefingPage page = BriefingPage.of(this, 0);
        for (int behind = 1; behind <= page.mostBehind() && spills(page); behind++) {
            page = BriefingPage.of(this, behind);
        }
        return section(front(page) + templates.fill("briefing-back", page.back()));
    }

    private boolean spills(BriefingPage page) {
        return press.pages(section(front(page))) > 1;
    }

    private String front(BriefingPage page) {
        return templates.fill("briefing-page", page);
    }

    private Section section(String html) {
        return new Section("Briefing", visit.subject(source), visit.authorised(source), html);
    }

    /** The page that stands in for a briefing nobody has made: it says so, and that work waits for one. */
    static Section missing(PlanSource source, SiteDay visit, Templates templates) {
        return new Section(
                "Briefing",
                visit.subject(source),
                visit.authorised(source),
                templates.fill(
                        "briefing-missing",
                        new Fact(visit.site().id(), source.clock().day(visit.date()))));
    }
}
