package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.effort.EffortFixture.planner;
import static org.wadeplan.planner.effort.EffortFixture.shocked;
import static org.wadeplan.planner.effort.EffortFixture.site;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Site;

class ShockTimeModelTest {

    private static final PastVisit ELSEWHERE = shocked("OUN-01", 2000, 4);
    private static final PastVisit SLOWER = shocked("OUN-03", 3000, 5);

    @Test
    void threeVisitsSpeakForTheSite() {
        EffortPlanner planner =
                planner(ELSEWHERE, shocked("BRN-01", 2000, 4), shocked("BRN-01", 2100, 4), shocked("BRN-01", 2400, 4));
        // Type 7: the 80th percentile of three lies 0.6 of the way from the second to the third.
        assertThat(shock(planner, site(96))).isEqualTo(new ShockTime(2100, 2280, 3, "median of 3 earlier visits"));
    }

    /** 500 and 600 s/m elsewhere: median 550, times 4 m 2200 s; the 80th percentile 580 is 1.0545 times the median. */
    @Test
    void withoutHistoryTheRoundsSecondsForEachMetreOfWidthSpeak() {
        assertThat(shock(planner(ELSEWHERE, SLOWER), site(96)))
                .isEqualTo(new ShockTime(
                        2200,
                        2320,
                        0,
                        "modelled, no history here: 550 s for each metre of width (median of 2 visits of the round) times"
                                + " 4 m"));
    }

    /** One visit of 1600 s at 4 m makes the round's median 500 s/m, so 2000 s; a third of 1600 and two of 2000. */
    @Test
    void oneVisitCountsAThird() {
        ShockTime time = shock(planner(ELSEWHERE, SLOWER, shocked("BRN-01", 1600, 4)), site(96));
        assertThat(time.p50S()).isEqualTo(1867);
        assertThat(time.pastVisits()).isEqualTo(1);
        assertThat(time.basis())
                .startsWith("1 earlier visit here (median 1600 s), and for the rest of three the model: 500 s");
    }

    @Test
    void withoutAnyWidthTheFewVisitsSpeakAlone() {
        Site noWidth = site("BRN-01", OptionalDouble.empty(), OptionalDouble.of(96), OptionalDouble.empty());
        PastVisit unmeasured = EffortFixture.visit(
                "BRN-01", "2026-09-01", "EFISH", OptionalInt.of(1600), OptionalInt.of(250), OptionalDouble.empty());
        ShockTime time = shock(planner(unmeasured), noWidth);
        assertThat(time.p50S()).isEqualTo(1600);
        assertThat(time.p80S()).isEqualTo(1600);
        assertThat(time.basis()).contains("no width to model the rest from");
    }

    private static ShockTime shock(EffortPlanner planner, Site site) {
        return planner.visit(site, EffortFixture.EFISH)
                .value()
                .flatMap(VisitEffort::shock)
                .orElseThrow();
    }
}
