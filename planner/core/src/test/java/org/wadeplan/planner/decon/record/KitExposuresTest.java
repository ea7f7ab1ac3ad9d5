package org.wadeplan.planner.decon.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;

/** In the agreed week of the troubled demo, which is invented. */
class KitExposuresTest {

    private static final Round ROUND = DemoRound.troubled();

    @Test
    void trapsAreInTheWaterFromTheSetToTheLift() {
        assertThat(KitExposures.of(
                        ROUND,
                        RoundPlanner.inForce(ROUND, PlanOptions.usual(), Progress.NONE)
                                .week()))
                .filteredOn(one -> one.kitSet().equals("T1"))
                .first()
                .satisfies(one -> {
                    assertThat(one.from()).isEqualTo(Instant.parse("2027-09-06T13:55:00Z"));
                    assertThat(one.until()).isEqualTo(Instant.parse("2027-09-07T09:21:00Z"));
                });
    }
}
