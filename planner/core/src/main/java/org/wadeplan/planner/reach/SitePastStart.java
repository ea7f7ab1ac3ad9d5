package org.wadeplan.planner.reach;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.network.LineMeasure;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.PastStartDrift;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;

/**
 * Where a past visit started, seen from today's start.
 *
 * @param site site code
 * @param date of the visit
 * @param part of the visit
 * @param drift along and off the stream line
 */
public record SitePastStart(String site, LocalDate date, VisitPart part, PastStartDrift drift) {

    /** Every past visit with coordinates of the sites that have a reach, in the order of the reaches, oldest first. */
    public static List<SitePastStart> of(Round round, List<Reach> reaches) {
        List<SitePastStart> starts = new ArrayList<>();
        for (Reach reach : reaches) {
            LineMeasure measure = round.terrain().network().measure(reach.stream());
            for (PastVisit visit : round.pastVisits()) {
                if (visit.site().equals(reach.site()) && visit.start().isPresent()) {
                    starts.add(new SitePastStart(
                            reach.site(),
                            visit.date(),
                            visit.part(),
                            PastStartDrift.of(
                                    visit.start().get(),
                                    measure,
                                    reach.start().chainageM(),
                                    round.header().reach().driftLimitM())));
                }
            }
        }
        return List.copyOf(starts);
    }

    /** A warning for each that drifted beyond the round's limit. */
    public static List<Problem> flagged(List<SitePastStart> starts) {
        return starts.stream()
                .filter(start -> start.drift().beyondLimit())
                .map(start -> Problem.warning(
                        "past-start-drift",
                        SourcePlace.part("past_visits.csv", start.site() + ", " + start.date()),
                        "the visit started " + start.drift().words() + " of today's start",
                        Math.round(start.drift().limitM()) + " m at most, along or off the line",
                        "check both places in the field before comparing sub-reach by sub-reach"))
                .toList();
    }
}
