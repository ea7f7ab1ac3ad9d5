package org.wadeplan.planner.pack.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.pack.SmallPlan;
import org.wadeplan.planner.pack.SmallRound;
import org.wadeplan.planner.round.Round;

/** Rules checked: RFC 5545 sections 3.1 (lines), 3.6.1 (events), 3.6.5 (zones). */
class WeekCalendarTest {

    private static final Instant MADE_AT = Instant.parse("2027-09-03T16:00:00Z");
    private static final Round ROUND = SmallRound.round(Path.of("unused"));

    private static String text() {
        return new String(WeekCalendar.of(ROUND, SmallPlan.of(ROUND), MADE_AT), StandardCharsets.UTF_8);
    }

    private static List<VEvent> events() throws Exception {
        Calendar read = new CalendarBuilder()
                .build(new ByteArrayInputStream(WeekCalendar.of(ROUND, SmallPlan.of(ROUND), MADE_AT)));
        assertThat(read.validate().hasErrors()).isFalse();
        return read.getComponents("VEVENT");
    }

    @Test
    void hasAnEventForEachVisitAndEachCleaning() throws Exception {
        assertThat(events())
                .extracting(event -> value(event, "SUMMARY"))
                .containsExactly(
                        "Survey A – BRN",
                        "Dry-check A – BRN",
                        "Set A – PEL – NOT AUTHORISED",
                        "Mark B – PEL",
                        "Night B – PEL",
                        "Lift A – PEL – NOT AUTHORISED",
                        "Clean K1 – A",
                        "Clean T2 – A");
    }

    @Test
    void stampsEachEventAndKeepsItConfidential() throws Exception {
        for (VEvent event : events()) {
            assertThat(value(event, "DTSTAMP")).isEqualTo("20270903T160000Z");
            assertThat(value(event, "SEQUENCE")).isEqualTo("0");
            assertThat(value(event, "CLASS")).isEqualTo("CONFIDENTIAL");
        }
        assertThat(events()).extracting(event -> value(event, "UID")).doesNotHaveDuplicates();
    }

    @Test
    void writesStartsInTheRoundsZone() {
        assertThat(text())
                .contains("TZID:Atlantic/Azores\r\n")
                .contains("DTSTART;TZID=Atlantic/Azores:20270906T083000\r\n")
                .contains("DTEND;TZID=Atlantic/Azores:20270906T133000\r\n");
    }

    @Test
    void tellsNoPlaces() {
        assertThat(text()).doesNotContain("BRN-01", "PEL-01", "GEO", "LOCATION", "46.1", "503150", "Tāne");
    }

    @Test
    void foldsLinesAt75OctetsAndEndsThemWithCrLf() {
        String[] lines = text().split("\r\n", -1);
        for (String line : lines) {
            assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75);
            assertThat(line).doesNotContain("\n").doesNotContain("\r");
        }
    }

    @Test
    void keepsAnEventsIdFromPlanToPlan() {
        String later = new String(
                WeekCalendar.of(ROUND, SmallPlan.of(ROUND), MADE_AT.plusSeconds(60)), StandardCharsets.UTF_8);
        assertThat(later.lines().filter(line -> line.startsWith("UID")).toList())
                .isEqualTo(text().lines().filter(line -> line.startsWith("UID")).toList());
    }

    @Test
    void statesTheClockChangesOnBothSidesOfTheWeek() {
        String zone = ZoneComponent.of(
                        ZoneId.of("Pacific/Auckland"),
                        Instant.parse("2027-09-20T00:00:00Z"),
                        Instant.parse("2027-09-30T00:00:00Z"))
                .toString();
        // From Java's zone rules: daylight saving ends in April, and begins on Sunday 26 September 2027 at 02:00.
        assertThat(zone)
                .contains("BEGIN:STANDARD\r\nDTSTART:20270404T030000\r\nTZOFFSETFROM:+1300\r\nTZOFFSETTO:+1200")
                .contains("BEGIN:DAYLIGHT\r\nDTSTART:20270926T020000\r\nTZOFFSETFROM:+1200\r\nTZOFFSETTO:+1300");
    }

    @Test
    void statesAZoneThatNeverChanges() {
        Instant day = Instant.parse("2027-09-20T00:00:00Z");
        assertThat(ZoneComponent.of(ZoneId.of("Etc/GMT+1"), day, day).toString())
                .contains("TZOFFSETFROM:-0100\r\nTZOFFSETTO:-0100");
    }

    private static String value(VEvent event, String property) {
        return event.<Property>getProperty(property).map(Property::getValue).orElse("missing");
    }
}
