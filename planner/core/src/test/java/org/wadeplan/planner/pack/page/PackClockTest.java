package org.wadeplan.planner.pack.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PackClockTest {

    private static final PackClock CLOCK = new PackClock(ZoneId.of("Atlantic/Azores"));

    @Test
    void namesTheDayOnlyWhereANightShiftHasCrossedMidnight() {
        LocalDate monday = LocalDate.of(2027, 9, 6);
        assertThat(CLOCK.timeOn(monday, Instant.parse("2027-09-06T23:50:00Z"))).isEqualTo("23:50");
        assertThat(CLOCK.timeOn(monday, Instant.parse("2027-09-07T00:20:00Z"))).isEqualTo("00:20 Tue 7 Sep");
    }

    @Test
    void writesTheOffsetOfTheDayBecauseClocksChange() {
        assertThat(CLOCK.moment(Instant.parse("2027-09-03T16:00:00Z")))
                .isEqualTo("2027-09-03 16:00 Z (Atlantic/Azores)");
        assertThat(CLOCK.moment(Instant.parse("2027-11-03T16:00:00Z")))
                .isEqualTo("2027-11-03 15:00 -01:00 (Atlantic/Azores)");
    }

    @Test
    void readsTheSameUnderAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(new Locale("tr", "TR"));
            assertThat(CLOCK.day(LocalDate.of(2027, 9, 6))).isEqualTo("Mon 6 Sep 2027");
            assertThat(Figures.plain(1234.5)).isEqualTo("1234.5");
            assertThat(Figures.plain(100)).isEqualTo("100");
        } finally {
            Locale.setDefault(before);
        }
    }
}
