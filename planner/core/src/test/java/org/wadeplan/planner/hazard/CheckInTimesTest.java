package org.wadeplan.planner.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.CheckInRules;

class CheckInTimesTest {

    @Test
    void addsTheIntervalToThePlannedEndAndTheGraceToThat() {
        CheckInRules rules = new CheckInRules(60, 45, "office check-in", "112", "invented rule");
        assertThat(CheckInTimes.after(Instant.parse("2027-09-06T12:34:00Z"), rules))
                .isEqualTo(
                        new CheckInTimes(Instant.parse("2027-09-06T13:34:00Z"), Instant.parse("2027-09-06T14:19:00Z")));
    }
}
