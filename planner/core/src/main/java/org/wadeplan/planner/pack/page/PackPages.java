package org.wadeplan.planner.pack.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.schedule.BathPlan;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/**
 * The printed part of a pack: one PDF for each crew-day, and the overview.
 *
 * <p>A crew-day's papers are in the order in which they are used: run sheet, load list, then site by site the map, the
 * visit page, the briefing and the record sheets, then the cleaning, then the emergency card.
 */
public final class PackPages {

    private final PlanSource source;
    private final Instant madeAt;
    private final BathPlan baths;
    private final ExposureLedger ledger;
    private final Templates templates = new Templates();
    private final PdfPress press = new PdfPress(templates);

    /** A visit for which the plan has no briefing gets a page that says so. */
    public PackPages(Round round, RoundPlan plan, Instant madeAt) {
        this.source = new PlanSource(round, plan, new PackClock(round.header().zone()));
        this.madeAt = madeAt;
        this.baths = BathPlan.of(round, plan.week());
        this.ledger = ExposureLedger.of(round, plan.week(), plan.kit());
    }

    /** All papers of one crew for one day. */
    public PressedPdf crewDay(CrewDay day) {
        List<Section> sections = new ArrayList<>();
        sections.add(RunSheet.section(source, day, templates));
        sections.add(LoadList.section(source, day, templates));
        for (SiteDay visit : source.siteDays(day)) {
            sections.addAll(sitePages(visit));
        }
        for (DeconTask task : source.decon(day)) {
            sections.add(DeconPage.section(source, day, new DeconPage.Cleaning(task, baths, ledger), templates));
        }
        sections.add(EmergencyCard.section(source, day, templates));
        return press.press(book("Crew " + day.crew() + ", " + source.clock().day(day.date()), sections));
    }

    /** The round on one or two pages. */
    public PressedPdf overview() {
        return press.press(book("Round overview", List.of(RoundOverview.section(source, templates))));
    }

    private List<Section> sitePages(SiteDay visit) {
        List<Section> pages = new ArrayList<>();
        pages.add(MapPage.section(source, visit, templates));
        pages.add(VisitPage.section(source, visit, templates));
        pages.addAll(briefing(visit));
        switch (visit.kind(source)) {
            case ELECTROFISHING -> pages.add(SubReachSheets.section(source, visit, templates));
            case NETTING -> pages.add(OtherRecords.nets(source, visit, templates));
            case SPOTLIGHTING -> pages.add(OtherRecords.spotlight(source, visit, templates));
            case DRY_RECORD -> pages.add(OtherRecords.dry(source, visit, templates));
            case NONE -> {
                // Deferred and referred sites have no visit, so nothing is recorded.
            }
        }
        pages.add(EndSheet.section(source, visit, templates));
        return pages;
    }

    private List<Section> briefing(SiteDay visit) {
        List<Section> pages = BriefingGroup.of(source.briefings(visit)).stream()
                .map(group -> new BriefingSheet(source, visit, group, templates, press).section())
                .toList();
        return pages.isEmpty() ? List.of(BriefingSheet.missing(source, visit, templates)) : pages;
    }

    private Book book(String title, List<Section> sections) {
        String footer = source.round().header().title() + " · plan "
                + source.plan().version().label();
        return new Book(
                source.round().header().title() + " – " + title,
                footer,
                madeAt,
                "made " + source.clock().moment(madeAt),
                sections);
    }
}
