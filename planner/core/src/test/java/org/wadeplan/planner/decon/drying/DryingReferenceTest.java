package org.wadeplan.planner.decon.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.files.ShippedTables;
import org.wadeplan.planner.round.GearClass;

/** Wet bulb against published values; evaporation, hours and days against tables that were worked out apart. */
class DryingReferenceTest {

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("drying.csv");
    }

    private static GearClass gear(String id) {
        return ShippedTables.gearClasses().stream()
                .filter(gear -> gear.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theFormulaGivesWhatTheTableSays(ReferenceTable.Row row) {
        double airC = row.number("air_c");
        double humidityPct = row.number("humidity_pct");
        double found =
                switch (row.text("what")) {
                    case "wet-bulb-c" -> Psychrometry.wetBulbC(airC, humidityPct);
                    case "evaporation" -> DryToTouch.evaporationGM2H(airC, humidityPct, DryToTouch.STILL_AIR_MS);
                    case "dry-h" ->
                        DryToTouch.hours(gear(row.text("gear")), airC, humidityPct, DryToTouch.STILL_AIR_MS)
                                .orElseThrow();
                    case "mussel-d" -> MusselSurvival.days(airC, humidityPct);
                    default -> throw new IllegalArgumentException(row.text("what"));
                };

        assertThat(found).isCloseTo(row.number("expected"), within(row.number("tolerance")));
    }
}
