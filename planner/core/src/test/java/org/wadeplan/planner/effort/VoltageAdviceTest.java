package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.effort.EffortFixture.planner;
import static org.wadeplan.planner.effort.EffortFixture.site;
import static org.wadeplan.planner.effort.EffortFixture.withSettings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VoltageCeiling;

/** No advice ever lies above a ceiling, and none is given where the water is too warm. */
class VoltageAdviceTest {

    /** On a boundary the row of the more conductive water counts, whose ceiling is the lower one. */
    @ParameterizedTest
    @CsvSource({"99.9, 1100", "100, 800", "299.9, 800", "300, 400", "5000, 400"})
    void theRowFromWhichTheWaterReachesCounts(double ambientUsCm, double ceilingV) {
        StartSettings start = settings(planner(used(60, 100)), site(ambientUsCm));
        assertThat(start.ceiling().map(VoltageCeiling::voltageMaxV)).hasValue(ceilingV);
    }

    /** 800 V at 300 uS/cm is 800 x 300 (299 + 115)/(299 (300 + 115)) = 800.7 V at 299, just above its ceiling of 800. */
    @Test
    void advisesNothingAboveTheCeilingAndSaysStop() {
        StartSettings start = settings(planner(used(800, 300)), site(299));
        assertThat(start.adviceVoltageV()).isEqualTo(OptionalInt.empty());
        assertThat(start.explanation())
                .contains(
                        "For 299 µS/cm today power transfer (fish 115 µS/cm; Kolz 1989, Miranda and Dolan 2003) gives "
                                + "801 V, above this round's ceiling of 800 V, so no voltage is advised.");
        assertThat(start.cautions().get(0))
                .isEqualTo("STOP at 800 V, the ceiling for this water (invented sheet). Where fish do not respond below"
                        + " it, use another method.");
        assertThat(settings(planner(used(800, 299)), site(299)).adviceVoltageV())
                .hasValue(800);
    }

    @ParameterizedTest
    @CsvSource({"21.9, false", "22, true", "30, true"})
    void advisesNothingFromTheStopTemperatureOn(double tempC, boolean stopped) {
        Site warm = site("BRN-01", OptionalDouble.of(4), OptionalDouble.of(96), OptionalDouble.of(tempC));
        StartSettings start = settings(planner(used(165, 96)), warm);
        assertThat(start.adviceVoltageV().isEmpty()).isEqualTo(stopped);
        assertThat(start.cautions().stream().anyMatch(caution -> caution.startsWith("STOP: water up to")))
                .isEqualTo(stopped);
    }

    @ParameterizedTest
    @CsvSource({"4.9, true", "5, false"})
    void cautionsAboutColdWater(double tempC, boolean expected) {
        Site cold = site("BRN-01", OptionalDouble.of(4), OptionalDouble.of(96), OptionalDouble.of(tempC));
        assertThat(settings(planner(used(165, 96)), cold).cautions().stream()
                        .anyMatch(caution -> caution.contains("fish respond poorly")))
                .isEqualTo(expected);
    }

    @Test
    void adviceBelowTheRowsOwnStartAsksToBeginLowerStill() {
        assertThat(settings(planner(used(90, 96)), site(96)).explanation()).contains("testing begins below the advice");
        assertThat(settings(planner(used(165, 96)), site(96)).explanation()).contains("testing begins at 100 V");
    }

    @Test
    void lastTimesFrequencyAndPulseAboveTheCeilingAreNamed() {
        PastVisit visit = withSettings(
                "2026-09-08",
                new ElectricSettings(80, 6, 48, 100),
                OptionalDouble.of(310),
                Optional.of(ConductivityBasis.AMBIENT),
                OptionalDouble.empty());
        assertThat(settings(planner(visit), site(310)).cautions())
                .contains(
                        "Last time's frequency of 80 Hz is above the ceiling of 70 Hz for today's water: stay below it, and"
                                + " note that catches then do not compare.",
                        "Last time's pulse of 6 ms is above the ceiling of 5 ms for today's water: stay below it, and note"
                                + " that catches then do not compare.");
    }

    @Test
    void aRecordAboveItsCeilingIsAFinding() {
        List<Problem> findings = CeilingCheck.findings(
                List.of(used(401, 300), used(400, 300), used(801, 299)),
                new ConductivityRule("linear", 0.02, "invented"),
                EffortFixture.rules().advice());
        assertThat(findings)
                .extracting(Problem::sentence)
                .containsExactly(
                        "past_visits.csv, BRN-01 2026-09-08, column voltage_v: 401 V was used in 300 µS/cm, above the"
                                + " ceiling of 400 V from 300 µS/cm in voltage_ceilings.csv. Allowed: a voltage up to the"
                                + " ceiling. Do: find out whether the record or the ceiling is wrong before anyone goes by"
                                + " either",
                        "past_visits.csv, BRN-01 2026-09-08, column voltage_v: 801 V was used in 299 µS/cm, above the"
                                + " ceiling of 800 V from 100 µS/cm in voltage_ceilings.csv. Allowed: a voltage up to the"
                                + " ceiling. Do: find out whether the record or the ceiling is wrong before anyone goes by"
                                + " either");
    }

    private static PastVisit used(double voltageV, double ambientUsCm) {
        return withSettings(
                "2026-09-08",
                new ElectricSettings(60, 4, 24, voltageV),
                OptionalDouble.of(ambientUsCm),
                Optional.of(ConductivityBasis.AMBIENT),
                OptionalDouble.empty());
    }

    private static StartSettings settings(EffortPlanner planner, Site site) {
        return planner.visit(site, EffortFixture.EFISH)
                .value()
                .flatMap(VisitEffort::settings)
                .orElseThrow();
    }
}
