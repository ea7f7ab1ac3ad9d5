package org.wadeplan.planner.pack.page;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.SubReach;
import org.wadeplan.planner.effort.PaceStep;
import org.wadeplan.planner.effort.VisitEffort;

/** Ten sub-reaches, two on a page, and a sheet for the end: what is written while electrofishing. */
record SubReachSheets(String heading, List<Sheet> sheets, String subReachCount) {

    private static final List<String> BLANK_CATCH = Collections.nCopies(7, "");

    record Sheet(String title, String stakes, String expected, boolean shade, List<String> catchRows) {}

    static Section section(PlanSource source, SiteDay visit, Templates templates) {
        return new Section(
                "Sub-reach records",
                visit.subject(source),
                visit.authorised(source),
                templates.fill("sub-reach-sheets", of(source, visit)));
    }

    static SubReachSheets of(PlanSource source, SiteDay visit) {
        String heading = visit.site().id() + ", " + source.clock().day(visit.date());
        List<SubReach> pieces =
                source.plan().reach(visit.site().id()).map(Reach::subReaches).orElse(List.of());
        List<PaceStep> pace = pace(source, visit, pieces.size());
        return new SubReachSheets(
                heading,
                IntStream.range(0, pieces.size())
                        .mapToObj(i -> sheet(heading, pieces.get(i), expected(pace, i), i % 2 == 0))
                        .toList(),
                Integer.toString(pieces.size()));
    }

    private static Sheet sheet(String heading, SubReach piece, String expected, boolean shade) {
        return new Sheet(
                heading + " – sub-reach " + piece.letter(),
                piece.downstream().name() + " up to " + piece.upstream().name() + ", " + Figures.plain(piece.lengthM())
                        + " m",
                expected,
                shade,
                BLANK_CATCH);
    }

    private static List<PaceStep> pace(PlanSource source, SiteDay visit, int pieces) {
        return source.plan()
                .effort(visit.site().id())
                .flatMap(VisitEffort::batteries)
                .map(need -> PaceStep.of(need.expectedShockS(), pieces))
                .orElse(List.of());
    }

    private static String expected(List<PaceStep> pace, int piece) {
        return piece < pace.size()
                ? "expect about " + pace.get(piece).expectedS() + " s; "
                        + pace.get(piece).totalS() + " s by its end"
                : "expected seconds not known";
    }
}
