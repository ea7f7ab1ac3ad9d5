package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.ReferenceTable.Row;

/** Packs per site as the scenario works them out. */
class BatteryPlanReferenceTest {

    static List<Row> sites() {
        return ReferenceTable.read("battery-packs.csv");
    }

    @ParameterizedTest
    @MethodSource("sites")
    void packsMatch(Row row) {
        int shockS = (int) row.number("shock_s");
        BatteryNeed need = EffortFixture.planner(EffortFixture.shocked("BRN-01", shockS, 4))
                .visit(EffortFixture.site(row.number("ambient_us_cm")), EffortFixture.EFISH)
                .value()
                .flatMap(VisitEffort::batteries)
                .orElseThrow();
        assertThat(need.expectedShockS()).isEqualTo(shockS);
        assertThat(need.usableSPerPack()).isEqualTo((int) row.number("usable_s"));
        assertThat(need.packs()).isEqualTo((int) row.number("packs"));
    }
}
