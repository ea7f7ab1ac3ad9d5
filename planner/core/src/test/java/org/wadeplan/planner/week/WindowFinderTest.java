package org.wadeplan.planner.week;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.permission.PermissionCheck;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;

class WindowFinderTest {

    private final Round round = IlvermoorWeek.resolved();

    private WindowSearch find(Round round, String site, String method, VisitPart part, int minutes, LocalDate date) {
        Site at = round.site(site).orElseThrow();
        MethodPart rules = round.method(method).orElseThrow().parts().stream()
                .filter(one -> one.part() == part)
                .findFirst()
                .orElseThrow();
        return new WindowFinder(round).find(at, rules, minutes, PermissionCheck.of(round, at, method, date));
    }

    private static List<Integer> minutes(WindowSearch found) {
        return Stream.concat(found.fitting().stream(), found.tooShort().stream())
                .map(TimeWindow::minutes)
                .toList();
    }

    /** Invented scenario 4.7: the overlap of dark and tide at PEL-02 is none, 21 and 73 minutes; its sunset is up to 3 min earlier. */
    @Test
    void darkAndTideAtTheSaltingsOverlapByNoneTwentyOneAndSeventyThreeMinutes() {
        LocalDate wednesday = LocalDate.of(2027, 9, 8);
        WindowSearch wed = find(round, "PEL-02", "SPOT", VisitPart.NIGHT, 60, wednesday);
        WindowSearch thu = find(round, "PEL-02", "SPOT", VisitPart.NIGHT, 60, wednesday.plusDays(1));
        WindowSearch fri = find(round, "PEL-02", "SPOT", VisitPart.NIGHT, 60, wednesday.plusDays(2));

        assertThat(minutes(wed)).isEmpty();
        assertThat(wed.reasons()).isNotEmpty();
        assertThat(thu.fitting()).isEmpty();
        assertThat(thu.tooShort()).singleElement().satisfies(window -> assertThat(window.minutes())
                .isCloseTo(21, within(4)));
        assertThat(fri.fitting()).singleElement().satisfies(window -> {
            assertThat(window.minutes()).isCloseTo(73, within(4));
            assertThat(window.closesBecause()).isEqualTo("tide: 120 min after low water 19:40");
        });
    }

    @Test
    void warmWaterMorningsAreBoundByTheGateAndTheLatestFinish() {
        WindowSearch found = find(round, "TOL-03", "EFISH_AM", VisitPart.SURVEY, 325, LocalDate.of(2027, 9, 8));

        assertThat(found.fitting()).singleElement().satisfies(window -> {
            assertThat(window.opensBecause()).isEqualTo("on the land from 07:15");
            assertThat(window.closesBecause()).isEqualTo("finish by 13:00 (method)");
            assertThat(window.minutes()).isEqualTo(345);
        });
    }

    @Test
    void aLiftWithoutNightAccessStaysBetweenDawnAndSunset() {
        WindowSearch found = find(round, "BRN-03", "TRAP", VisitPart.LIFT, 115, LocalDate.of(2027, 9, 7));

        assertThat(found.fitting()).singleElement().satisfies(window -> assertThat(window.closesBecause())
                .startsWith("no access after dark: sunset"));
    }

    @Test
    void aTidalSiteWithoutATideTableHasNoWindowAndSaysSo() {
        Round noTides = RoundChange.of(round).tides(List.of()).round();

        assertThat(find(noTides, "PEL-01", "TRAP", VisitPart.SET, 65, LocalDate.of(2027, 9, 8))
                        .reasons())
                .contains("PEL-01 is tidal and the tide table has no low water for it on 2027-09-08.");
    }

    @Test
    void aBlockedPermissionLeavesNoWindow() {
        WindowSearch found = find(round, "OUN-02", "EFISH", VisitPart.SURVEY, 355, LocalDate.of(2027, 9, 8));

        assertThat(found.fitting()).isEmpty();
        assertThat(found.reasons()).contains("Consent C-OUN-02 for OUN-02 was refused.");
    }
}
