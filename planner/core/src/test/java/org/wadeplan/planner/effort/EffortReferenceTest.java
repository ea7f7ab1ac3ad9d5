package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.ReferenceTable.Row;
import org.wadeplan.planner.round.ConductivityRule;

/** Formulas against tables from outside the project; every row names its source. */
class EffortReferenceTest {

    private static final Offset<Double> FOUR_DECIMALS = within(0.000051);

    static List<Row> multipliers() {
        return ReferenceTable.read("power-transfer-multipliers.csv");
    }

    static List<Row> goals() {
        return ReferenceTable.read("power-transfer-goals.csv");
    }

    static List<Row> conversions() {
        return ReferenceTable.read("conductivity-conversion.csv");
    }

    static List<Row> oracles() {
        return ReferenceTable.read("effort-oracles.csv");
    }

    static List<Row> quantiles() {
        return ReferenceTable.read("quantile-type7.csv");
    }

    @ParameterizedTest
    @MethodSource("multipliers")
    void powerTransferMultipliersMatch(Row row) {
        double ambient = row.number("ambient_us_cm");
        for (int fish : List.of(115, 60, 150)) {
            PowerTransfer transfer = new PowerTransfer(fish);
            double power = transfer.powerMultiplier(ambient);
            double voltage = transfer.voltageMultiplier(ambient);
            assertThat(power).isCloseTo(row.number("power_" + fish), FOUR_DECIMALS);
            assertThat(voltage).isCloseTo(row.number("voltage_" + fish), FOUR_DECIMALS);
            // Identity: power is voltage times current.
            assertThat(voltage * transfer.currentMultiplier(ambient)).isCloseTo(power, within(1e-12));
        }
        PowerTransfer standard = new PowerTransfer(115);
        assertThat(standard.currentMultiplier(ambient)).isCloseTo(row.number("current_115"), FOUR_DECIMALS);
        assertThat(1 / standard.powerMultiplier(ambient)).isCloseTo(row.number("efficiency_115"), FOUR_DECIMALS);
    }

    @ParameterizedTest
    @MethodSource("goals")
    void theWorkedGoalTableMatches(Row row) {
        double ambient = row.number("ambient_us_cm");
        PowerTransfer transfer = new PowerTransfer(115);
        double voltageV = transfer.rescaledVoltageV(200, 100, ambient);
        double ohm = PowerTransfer.resistanceOhm(255, ambient);
        double currentA = voltageV / ohm;
        assertThat(voltageV).isCloseTo(row.number("voltage_v"), within(0.05));
        assertThat(ohm).isCloseTo(row.number("resistance_ohm"), within(0.05));
        assertThat(currentA).isCloseTo(row.number("current_a"), within(0.0005));
        assertThat(transfer.rescaledCurrentA(200 / 255.0, 100, ambient)).isCloseTo(currentA, within(1e-9));
        assertThat(transfer.rescaledPowerW(200 * 200 / 255.0, 100, ambient))
                .isCloseTo(row.number("peak_w"), within(0.05));
        assertThat(PulseDuty.meanPowerW(voltageV, currentA, 25))
                .isCloseTo(row.number("mean_w_at_25_pct"), within(0.05));
    }

    @ParameterizedTest
    @MethodSource("conversions")
    void conductivityConvertsBothWaysByEachRule(Row row) {
        check(row, "exponential", 0.02, "exponential_2");
        check(row, "linear", 0.0191, "linear_1_91");
        check(row, "linear", 0.02, "linear_2");
    }

    private static void check(Row row, String rule, double perDegree, String column) {
        ConductivityConversion conversion = conversion(rule, perDegree);
        double tempC = row.number("temp_c");
        assertThat(conversion.toAmbient(1, tempC).valueUsCm()).isCloseTo(row.number("ratio_" + column), FOUR_DECIMALS);
        double ambient = conversion.toAmbient(300, tempC).valueUsCm();
        assertThat(ambient).isCloseTo(row.number("ambient_of_300_" + column), within(0.0501));
        assertThat(conversion.toSpecific(ambient, tempC).valueUsCm()).isCloseTo(300, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("oracles")
    void singleWorkedValuesMatch(Row row) {
        double a = row.number("a");
        double b = row.number("b");
        double c = row.number("c");
        double found =
                switch (row.text("formula")) {
                    case "rescaled-current" -> new PowerTransfer(115).rescaledCurrentA(a, b, c);
                    case "width" -> PulseDuty.pulseWidthMs(a, b);
                    case "duty" -> PulseDuty.dutyPct(a, b);
                    case "resistance" -> PowerTransfer.resistanceOhm(a, b);
                    case "mean-power" -> PulseDuty.meanPowerW(a, b, c);
                    case "goal-voltage" -> a * new PowerTransfer(115).voltageMultiplier(b);
                    case "to-ambient-linear-2" ->
                        conversion("linear", 0.02).toAmbient(a, b).valueUsCm();
                    case "to-specific-linear-1.9" ->
                        conversion("linear", 0.019).toSpecific(a, b).valueUsCm();
                    default -> throw new AssertionError("no such formula: " + row.text("formula"));
                };
        assertThat(found).isCloseTo(row.number("expected"), within(row.number("tolerance")));
    }

    @ParameterizedTest
    @MethodSource("quantiles")
    void quantilesFollowDefinitionSeven(Row row) {
        List<Double> sample = Arrays.stream(row.text("sample").split(" "))
                .map(Double::valueOf)
                .toList();
        assertThat(Quantile.of(sample, row.number("share"))).isCloseTo(row.number("expected"), within(1e-9));
    }

    private static ConductivityConversion conversion(String name, double perDegree) {
        return ConductivityConversion.of(new ConductivityRule(name, perDegree, "test"))
                .orElseThrow();
    }
}
