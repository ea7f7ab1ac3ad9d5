package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.ReferenceTable.Row;

/** Detection, accumulation, electrodes, packs, catch rates and welfare sums against tables from outside the project. */
class EffortSumsReferenceTest {

    static List<Row> sums() {
        return ReferenceTable.read("effort-sums.csv");
    }

    static List<Row> electrodes() {
        return ReferenceTable.read("electrodes.csv");
    }

    static List<Row> detection() {
        return ReferenceTable.read("detection.csv");
    }

    static List<Row> accumulation() {
        return ReferenceTable.read("accumulation.csv");
    }

    static List<Row> batteryMinutes() {
        return ReferenceTable.read("battery-minutes.csv");
    }

    @ParameterizedTest
    @MethodSource("sums")
    void singleSumsMatch(Row row) {
        double a = row.number("a");
        double b = row.number("b");
        double c = row.number("c");
        double found =
                switch (row.text("formula")) {
                    case "presence" -> Detection.presenceAfterBlanks(a, b, (int) c);
                    case "blanks" -> Detection.blanksNeeded(a, b, c);
                    case "per-unit" -> Detection.perUnitNeeded(a, (int) b);
                    case "density" -> rate(a, c).perM2();
                    case "density-100" -> rate(a, c).per100M2();
                    case "per-hour" -> rate(a, c).perHour();
                    case "per-min" -> rate(a, c).perMin();
                    case "stock" -> WelfareSums.stockMl(a, b, c);
                    case "powder" -> WelfareSums.powderG(a, b);
                    case "buckets" -> WelfareSums.buckets((int) a, (int) b);
                    case "packs" -> BatteryEnergy.packs(a, b);
                    case "usable" -> BatteryEnergy.usableWh(a, b, c, 100);
                    case "peak-power" -> PulseDuty.meanPowerW(a, b, 100);
                    case "current" -> a / PowerTransfer.resistanceOhm(255, 327);
                    default -> throw new AssertionError("no such formula: " + row.text("formula"));
                };
        assertThat(found).isCloseTo(row.number("expected"), within(row.number("tolerance")));
    }

    /** 150 m by 4 m, as the rows' source says. */
    private static CatchRate rate(double fish, double shockS) {
        return new CatchRate((int) fish, 150, 4, shockS);
    }

    @ParameterizedTest
    @MethodSource("electrodes")
    void electrodesMatch(Row row) {
        double a = row.number("a");
        double b = row.number("b");
        double c = row.number("c");
        double found =
                switch (row.text("formula")) {
                    case "sphere" -> Electrodes.sphereOhm(a, b);
                    case "half-sphere" -> Electrodes.halfSphereOhm(a, b);
                    case "ring" -> Electrodes.ringOhm(a, b, c);
                    case "rod" -> Electrodes.rodOhm(a, b, c);
                    case "system" -> Electrodes.systemOhm(a, (int) b, c);
                    case "field" -> Electrodes.fieldVCm(a, b, c);
                    case "scaled" -> PowerTransfer.resistanceOhm(a, b);
                    default -> throw new AssertionError("no such formula: " + row.text("formula"));
                };
        assertThat(found).isCloseTo(row.number("expected"), within(row.number("tolerance")));
    }

    @ParameterizedTest
    @MethodSource("detection")
    void theDetectionTableMatches(Row row) {
        double perUnit = row.number("per_unit");
        for (int units : List.of(1, 2, 3, 5, 10)) {
            assertThat(Detection.probability(perUnit, units)).isCloseTo(row.number("units_" + units), within(5.1e-5));
        }
        for (int target : List.of(80, 90, 95, 99)) {
            assertThat(Detection.unitsNeeded(perUnit, target / 100.0))
                    .as("%d %%", target)
                    .isEqualTo((int) row.number("for_" + target));
        }
    }

    @ParameterizedTest
    @MethodSource("accumulation")
    void theAccumulationCurvesMatch(Row row) {
        Accumulation curve = row.text("scale").equals("metre") ? Accumulation.BY_METRE : Accumulation.BY_WIDTH;
        assertThat(curve.shareAt(row.number("length"))).isCloseTo(row.number("share"), within(5.1e-5));
    }

    @ParameterizedTest
    @MethodSource("batteryMinutes")
    void packMinutesMatch(Row row) {
        double meanW = row.number("mean_w");
        double usableWh = BatteryEnergy.usableWh(168, 0.8, 0.8, 100);
        assertThat(BatteryEnergy.minutes(usableWh, meanW)).isCloseTo(row.number("simple_min"), within(0.051));
        assertThat(0.8 * BatteryEnergy.peukertMinutes(meanW / (24 * 0.8), 7, 20, 1.2))
                .isCloseTo(row.number("peukert_min"), within(0.051));
    }
}
