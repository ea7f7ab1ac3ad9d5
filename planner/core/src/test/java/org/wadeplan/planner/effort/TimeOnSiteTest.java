package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.wadeplan.planner.effort.EffortFixture.planner;
import static org.wadeplan.planner.effort.EffortFixture.site;
import static org.wadeplan.planner.effort.EffortFixture.survey;
import static org.wadeplan.planner.effort.EffortFixture.visit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;

class TimeOnSiteTest {

    @Test
    void threeEarlierVisitsOfTheSameKindOfMethodOutweighTheMethodsFigure() {
        EffortPlanner planner = planner(
                survey("2024-09-07", "EFISH", 250),
                survey("2025-06-12", "EFISH_AM", 280),
                survey("2026-09-08", "EFISH", 330),
                survey("2025-09-09", "EFISH", 245),
                visit(
                        "OUN-03",
                        "2025-09-09",
                        "EFISH",
                        OptionalInt.empty(),
                        OptionalInt.of(900),
                        OptionalDouble.empty()),
                survey("2023-09-09", "TRAP", 900));
        assertThat(planner.visit(site(96), EffortFixture.EFISH_AM)
                        .value()
                        .orElseThrow()
                        .parts())
                .containsExactly(new PartEffort(
                        VisitPart.SURVEY,
                        265,
                        300,
                        4,
                        "4 earlier visits took 245 to 330 min; median, and 80th percentile (type 7)"));
    }

    @Test
    void minutesAreRoundedUp() {
        EffortPlanner planner = planner(
                survey("2024-09-07", "EFISH", 100),
                survey("2025-09-07", "EFISH", 101),
                survey("2025-09-08", "EFISH", 102),
                survey("2026-09-07", "EFISH", 103));
        PartEffort effort = part(planner, site(96));
        assertThat(effort.p50Min()).isEqualTo(102);
        assertThat(effort.p80Min()).isEqualTo(103);
    }

    /** The model says 253 min for 4 m: a third of the way to it from 900 min is 684.33, a visit alone 468.67. */
    @Test
    void withFewerThanThreeVisitsTheMethodsFigureStandsInForTheRest() {
        assertThat(part(planner(survey("2024-09-07", "EFISH", 900), survey("2025-09-07", "EFISH", 900)), site(96)))
                .isEqualTo(
                        new PartEffort(
                                VisitPart.SURVEY,
                                685,
                                852,
                                2,
                                "2 earlier visits (median 900 min), and for the rest of three the figure of EFISH (invented "
                                        + "sheet): 165 min and 22 min for each of 4 m of width; 80th percentile 1.245 times that"));
        assertThat(part(planner(survey("2024-09-07", "EFISH", 900)), site(96)))
                .extracting(PartEffort::p50Min, PartEffort::pastVisits)
                .containsExactly(469, 1);
        assertThat(part(planner(), site(96)))
                .extracting(PartEffort::p50Min, PartEffort::pastVisits)
                .containsExactly(253, 0);
    }

    /** 165 + 22 x 4 + 0.5 x 80 fish = 293 min; the median of the counts that were written down. */
    @Test
    void theModelCountsFishWhereTheMethodSaysWhatOneTakes() {
        Method byFish = EffortFixture.perFish(EffortFixture.EFISH, 0.5);
        EffortPlanner counted = EffortPlanner.of(
                EffortFixture.rules(),
                List.of(EffortFixture.counted("OUN-01", 60), EffortFixture.counted("OUN-03", 100)),
                List.of(byFish));
        PartEffort effort =
                counted.visit(site(96), byFish).value().orElseThrow().parts().get(0);
        assertThat(effort.p50Min()).isEqualTo(293);
        assertThat(effort.basis()).contains("and 0.5 min for each of 80 fish (median of earlier visits)");
        PartEffort uncounted = EffortPlanner.of(EffortFixture.rules(), List.of(), List.of(byFish))
                .visit(site(96), byFish)
                .value()
                .orElseThrow()
                .parts()
                .get(0);
        assertThat(uncounted.p50Min()).isEqualTo(253);
        assertThat(uncounted.basis()).contains("nothing for fish, for no earlier visit counted them");
    }

    @Test
    void partsComeInOrderAndThoseWithoutWidthNeedNone() {
        Site noWidth = site("BRN-03", OptionalDouble.empty(), OptionalDouble.of(14), OptionalDouble.empty());
        List<PartEffort> parts = planner()
                .visit(noWidth, EffortFixture.TRAP)
                .value()
                .orElseThrow()
                .parts();
        assertThat(parts)
                .extracting(PartEffort::part, PartEffort::p50Min, PartEffort::p80Min)
                .containsExactly(tuple(VisitPart.SET, 60, 75), tuple(VisitPart.LIFT, 90, 115));
    }

    @Test
    void anUnknownWidthFallsBackOnEarlierVisitsAndSaysSo() {
        Site noWidth = site("BRN-01", OptionalDouble.empty(), OptionalDouble.of(96), OptionalDouble.empty());
        PartEffort effort = part(
                planner(EffortFixture.shocked("BRN-01", 2000, 4), EffortFixture.shocked("BRN-01", 2000, 6)), noWidth);
        assertThat(effort.p50Min()).isEqualTo(275);
        assertThat(effort.basis()).contains("5 m of width (the median of earlier visits)");
    }

    @Test
    void withoutAnyWidthThereIsNoVisitAndAReason() {
        Site noWidth = site("BRN-01", OptionalDouble.empty(), OptionalDouble.of(96), OptionalDouble.empty());
        Checked<VisitEffort> visit = planner().visit(noWidth, EffortFixture.EFISH);
        assertThat(visit.value()).isEmpty();
        assertThat(visit.problems())
                .extracting(Problem::code, problem -> problem.place().toString())
                .contains(tuple("width-unknown", "sites.csv, BRN-01, column width_m"));
    }

    private static PartEffort part(EffortPlanner planner, Site site) {
        return planner.visit(site, EffortFixture.EFISH)
                .value()
                .orElseThrow()
                .part(VisitPart.SURVEY)
                .orElseThrow();
    }
}
