package org.wadeplan.planner.week.light;

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

class DayLightReferenceTest {

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("sun.csv");
    }

    /** Within the row's tolerance, which allows for the Sun's radius that the rows count twice. */
    @ParameterizedTest
    @MethodSource("rows")
    void riseAndSetAgreeWithAnAlmanac(ReferenceTable.Row row) {
        DayLight sun = DayLight.at(
                new LonLat(row.number("lon_deg"), row.number("lat_deg")),
                LocalDate.parse(row.text("date")),
                ZoneId.of(row.text("zone")));

        assertThat(sun.course()).isEqualTo(DayLight.Course.RISES_AND_SETS);
        agree(sun.sunrise(), row.text("rise"), row);
        agree(sun.sunset(), row.text("set"), row);
    }

    private static void agree(Optional<Instant> time, String expected, ReferenceTable.Row row) {
        if (!expected.isBlank()) {
            assertThat(Duration.between(Instant.parse(expected), time.orElseThrow())
                            .abs())
                    .isLessThanOrEqualTo(Duration.ofSeconds((long) row.number("library_tolerance_s")));
        }
    }

    /** Common practice: at 78 N the Sun does not set in June nor rise in December. */
    @Test
    void polarDayAndNightAreValues() {
        LonLat north = new LonLat(16, 78);
        ZoneId zone = ZoneId.of("UTC");

        assertThat(DayLight.at(north, LocalDate.of(2027, 6, 21), zone).course()).isEqualTo(DayLight.Course.NEVER_SETS);
        assertThat(DayLight.at(north, LocalDate.of(2027, 12, 21), zone).course())
                .isEqualTo(DayLight.Course.NEVER_RISES);
    }
}
