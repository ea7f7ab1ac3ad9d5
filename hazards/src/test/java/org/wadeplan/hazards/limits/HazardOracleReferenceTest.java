package org.wadeplan.hazards.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.wadeplan.hazards.limits.PersonStability.Footing;

/** Every row of {@code reference/limits.csv} against the formulas; each row names its source. */
class HazardOracleReferenceTest {

    private record Row(
            String id, String quantity, Map<String, String> inputs, String expected, String tolerance, String source) {

        double number(String name) {
            return Double.parseDouble(Objects.requireNonNull(inputs.get(name), id + " lacks " + name));
        }

        String text(String name) {
            return Objects.requireNonNull(inputs.get(name), id + " lacks " + name);
        }
    }

    private static final Map<String, Function<Row, Estimate>> NUMBERS = Map.ofEntries(
            Map.entry("heat_index_chart_raw_F", row -> HeatIndex.rawF(row.number("T_F"), row.number("RH"))),
            Map.entry("heat_index_raw_F", row -> HeatIndex.rawF(row.number("T_F"), row.number("RH"))),
            Map.entry("heat_index_full_F", row -> HeatIndex.fullF(row.number("T_F"), row.number("RH"))),
            Map.entry("heat_index_rounded_F", row -> HeatIndex.fullF(row.number("T_F"), row.number("RH"))),
            Map.entry("heat_index_full_C", row -> HeatIndex.fullC(row.number("T_C"), row.number("RH"))),
            Map.entry("wind_chill_C_table", row -> WindChill.chillC(row.number("T_C"), row.number("V_kmh"))),
            Map.entry("wind_chill_C", row -> WindChill.chillC(row.number("T_C"), row.number("V_kmh"))),
            Map.entry("wind_chill_F", row -> WindChill.chillF(row.number("T_F"), row.number("V_mph"))),
            Map.entry("wbgt_est_C", row -> WetBulbEstimate.globeC(row.number("T_C"), row.number("RH"))),
            Map.entry("kirpich_min", row -> RiseTime.kirpichMin(row.number("L_m"), row.number("S"))),
            Map.entry("kirpich_ft_min", row -> RiseTime.kirpichFromFeetMin(row.number("L_ft"), row.number("S"))),
            Map.entry(
                    "bransby_williams_min",
                    row -> RiseTime.bransbyWilliamsMin(
                            row.number("L_km"), row.number("A_km2"), row.number("S_m_per_km"))),
            Map.entry("pilgrim_mcdermott_min", row -> RiseTime.pilgrimMcDermottMin(row.number("A_km2"))),
            Map.entry("abt_dv_m2s", row -> PersonStability.abtM2S(body(row))),
            Map.entry("abt_dv_ft2s", row -> PersonStability.abtFt2S(row.number("W_lb"), row.number("H_in"))),
            Map.entry(
                    "finnish_dv_m2s",
                    row -> PersonStability.finnishM2S(
                            body(row), Footing.valueOf(row.text("cond").toUpperCase(Locale.ROOT)))),
            Map.entry("uk_hazard_rating", row -> FloodRating.of(row.number("D"), row.number("V"), row.number("DF"))),
            Map.entry("lightning_mi", row -> Lightning.distanceMi(row.number("s"))),
            Map.entry("sound_speed_ms", row -> Lightning.soundSpeedMS(row.number("T_C"))),
            Map.entry("flesch_kincaid_grade", row -> ReadingEase.grade(count(row))),
            Map.entry("flesch_ease", row -> ReadingEase.ease(count(row))),
            Map.entry(
                    "niosh_rwl_kg",
                    row -> LiftingLimit.recommendedKg(new LiftingLimit.Lift(
                            row.number("H"),
                            row.number("V"),
                            row.number("D"),
                            row.number("A"),
                            row.number("FM"),
                            row.number("CM")))));

    private static final Map<String, Function<Row, String>> CLASSES = Map.of(
            "adult_flow_class",
                    row -> FlowClass.ofAdult(row.number("D"), row.number("V")).words(),
            "benthic_mat_level",
                    row -> BenthicMats.ofCoverPct(row.number("cover"))
                            .orElseThrow()
                            .words(),
            "cold_water_band",
                    row -> ColdWater.ofC(row.number("T_C")).orElseThrow().words(),
            "heat_band", row -> HeatBand.ofF(row.number("HI_F")).words());

    @TestFactory
    Stream<DynamicTest> everyReferenceRowIsMet() {
        return rows().stream().map(row -> DynamicTest.dynamicTest(row.id() + " " + row.inputs(), () -> check(row)));
    }

    @Test
    void theWholeFileIsReadAndEveryQuantityIsUsed() {
        assertThat(rows()).hasSizeGreaterThan(300);
        assertThat(rows().stream().map(Row::quantity).distinct())
                .containsExactlyInAnyOrderElementsOf(Stream.concat(NUMBERS.keySet().stream(), CLASSES.keySet().stream())
                        .toList());
    }

    private static void check(Row row) {
        assertThat(row.source()).as("source of " + row.id()).isNotBlank();
        if (row.tolerance().equals("exact")) {
            Function<Row, String> words = Objects.requireNonNull(CLASSES.get(row.quantity()), row.quantity());
            assertThat(words.apply(row)).isEqualTo(row.expected());
        } else {
            Function<Row, Estimate> formula = Objects.requireNonNull(NUMBERS.get(row.quantity()), row.quantity());
            assertThat(formula.apply(row).value().orElseThrow())
                    .isCloseTo(Double.parseDouble(row.expected()), within(Double.parseDouble(row.tolerance())));
        }
    }

    private static Wader body(Row row) {
        return new Wader(row.number("H_m"), row.number("M_kg"));
    }

    private static ReadingEase.Count count(Row row) {
        return new ReadingEase.Count((int) row.number("w"), (int) row.number("s"), (int) row.number("syl"));
    }

    private static List<Row> rows() {
        InputStream file = Objects.requireNonNull(
                HazardOracleReferenceTest.class.getResourceAsStream("/reference/limits.csv"), "limits.csv");
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).map(HazardOracleReferenceTest::row).toList();
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static Row row(String line) {
        String[] cells = line.split(",", 7);
        Map<String, String> inputs = Stream.of(cells[2].split(";", -1))
                .map(pair -> pair.split("=", 2))
                .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1], (a, b) -> b, TreeMap::new));
        return new Row(cells[0], cells[1], inputs, cells[3], cells[4], cells[6]);
    }
}
