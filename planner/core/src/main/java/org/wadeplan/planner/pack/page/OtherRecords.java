package org.wadeplan.planner.pack.page;

import java.util.Collections;
import java.util.List;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.round.VisitPart;

/** Record sheets for nets, spotlight and dry sites. */
record OtherRecords(String heading, String planned, List<String> rows, boolean lifting) {

    private static final int NET_ROWS = 20;

    static Section nets(PlanSource source, SiteDay visit, Templates templates) {
        boolean lifting = visit.has(VisitPart.LIFT);
        OtherRecords view = new OtherRecords(
                heading(source, visit), planned(source, visit), Collections.nCopies(NET_ROWS, ""), lifting);
        return section("Net log", "net-log", source, visit, templates, view);
    }

    static Section spotlight(PlanSource source, SiteDay visit, Templates templates) {
        return section("Spotlight record", "spotlight-sheet", source, visit, templates, byLetter(source, visit));
    }

    static Section dry(PlanSource source, SiteDay visit, Templates templates) {
        return section("Dry record", "dry-sheet", source, visit, templates, byLetter(source, visit));
    }

    private static OtherRecords byLetter(PlanSource source, SiteDay visit) {
        List<String> letters = source.plan().reach(visit.site().id()).map(Reach::subReaches).orElse(List.of()).stream()
                .map(piece -> String.valueOf(piece.letter()))
                .toList();
        return new OtherRecords(heading(source, visit), planned(source, visit), letters, false);
    }

    private static Section section(
            String title, String template, PlanSource source, SiteDay visit, Templates templates, OtherRecords view) {
        return new Section(title, visit.subject(source), visit.authorised(source), templates.fill(template, view));
    }

    private static String heading(PlanSource source, SiteDay visit) {
        return visit.site().id() + ", " + source.clock().day(visit.date()) + ": " + source.methodLabel(visit.method())
                + ", " + visit.parts();
    }

    private static String planned(PlanSource source, SiteDay visit) {
        PackClock clock = source.clock();
        List<String> spans = visit.visits().stream()
                .map(activity -> activity.part().map(VisitPart::word).orElse("visit") + " "
                        + clock.timeOn(visit.date(), activity.start()) + " to "
                        + clock.timeOn(visit.date(), activity.end()))
                .toList();
        return "Planned: " + String.join("; ", spans);
    }
}
