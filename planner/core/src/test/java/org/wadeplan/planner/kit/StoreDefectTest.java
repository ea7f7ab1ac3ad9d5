package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The traps of the Ilvermoor scenario's inventory, section 4.6. */
class StoreDefectTest {

    @Test
    void namesWhatStaysInWithItsTag() {
        assertThat(StoreDefect.of(AgreedWeekKit.ROUND))
                .extracting(defect -> defect.item() + ": " + defect.found() + " / " + defect.tag())
                .containsExactly(
                        "E1: service was last valid on 2027-09-07 / service due, last valid day Tue 2027-09-07",
                        "E3: there from Wed 8 Sep 12:00 until Fri 10 Sep 17:00 / on hire from Wednesday noon",
                        "M2: calibration was last valid on 2027-09-05 / reads specific conductance at 25 °C only",
                        "G4: test was last valid on 2027-08-31 / test out of date",
                        "N2: out of service / frame cracked",
                        "T2-FYKE6: out of service / wing torn",
                        "L2: out of service / lamp fails at 40 min",
                        "C1-OLD: expired after 2027-08-31 / ",
                        "V2: inspection was last valid on 2027-09-09 / inspection due, last valid day Thu 2027-09-09");
    }
}
