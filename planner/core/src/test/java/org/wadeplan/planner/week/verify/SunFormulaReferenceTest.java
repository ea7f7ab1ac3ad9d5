package org.wadeplan.planner.week.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.week.light.DayLight;

class SunFormulaReferenceTest {

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("sun.csv");
    }

    /**
     * The rows put the Sun's upper limb 50 arc minutes below the horizon, which counts its radius of 16 minutes
     * twice; with the centre at 66 arc minutes the formula reproduces them.
     */
    @ParameterizedTest
    @MethodSource("rows")
    void riseAndSetAgreeWithTheComputedRows(ReferenceTable.Row row) {
        double zenithDeg = row.number("zenith_deg");

        agree(SunFormula.rise(place(row), date(row), zone(row), zenithDeg), row.text("rise"), row);
        agree(SunFormula.set(place(row), date(row), zone(row), zenithDeg), row.text("set"), row);
    }

    /** The library that the search uses and the formula that the check uses are two independent ways to the same times. */
    @ParameterizedTest
    @MethodSource("rows")
    void theLibraryAndTheFormulaAgreeWithinAMinute(ReferenceTable.Row row) {
        DayLight library = DayLight.at(place(row), date(row), zone(row));

        near(SunFormula.rise(place(row), date(row), zone(row), SunFormula.RISE_SET_DEG), library.sunrise());
        near(SunFormula.set(place(row), date(row), zone(row), SunFormula.RISE_SET_DEG), library.sunset());
        near(SunFormula.rise(place(row), date(row), zone(row), SunFormula.CIVIL_DEG), library.civilDawn());
        near(SunFormula.set(place(row), date(row), zone(row), SunFormula.CIVIL_DEG), library.civilDusk());
    }

    private static void near(Optional<Instant> one, Optional<Instant> other) {
        assertThat(Duration.between(one.orElseThrow(), other.orElseThrow()).abs())
                .isLessThan(Duration.ofSeconds(60));
    }

    private static LonLat place(ReferenceTable.Row row) {
        return new LonLat(row.number("lon_deg"), row.number("lat_deg"));
    }

    private static LocalDate date(ReferenceTable.Row row) {
        return LocalDate.parse(row.text("date"));
    }

    private static ZoneId zone(ReferenceTable.Row row) {
        return ZoneId.of(row.text("zone"));
    }

    private static void agree(Optional<Instant> time, String expected, ReferenceTable.Row row) {
        if (!expected.isBlank()) {
            assertThat(Duration.between(Instant.parse(expected), time.orElseThrow())
                            .abs())
                    .isLessThanOrEqualTo(Duration.ofSeconds((long) row.number("formula_tolerance_s")));
        }
    }

    @Test
    void polarDayHasNoSunset() {
        assertThat(SunFormula.set(
                        new LonLat(16, 78), LocalDate.of(2027, 6, 21), ZoneId.of("UTC"), SunFormula.RISE_SET_DEG))
                .isEmpty();
    }
}
