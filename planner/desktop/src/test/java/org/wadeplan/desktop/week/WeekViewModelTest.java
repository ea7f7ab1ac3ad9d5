package org.wadeplan.desktop.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.Selection;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;

class WeekViewModelTest {

    private final SessionModel session =
            new SessionModel(new StubDesk(), new BackgroundWork(Runnable::run, Runnable::run));
    private final WeekViewModel week = new WeekViewModel(session);

    @BeforeEach
    void open() {
        session.open(InventedWeek.FOLDER);
    }

    private WeekPicture picture() {
        return week.pictureProperty().get().orElseThrow();
    }

    private Lane lane(int day, String label) {
        return picture().days().get(day).lanes().stream()
                .filter(lane -> lane.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private String fact(String head) {
        return week.factsProperty().get().stream()
                .filter(fact -> fact.head().equals(head))
                .map(Fact::text)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyActivityIsABarAndARow() {
        assertThat(picture().crewBars()).isEqualTo(InventedWeek.CREW_BARS);
        assertThat(week.rowsProperty().get()).hasSize(InventedWeek.CREW_BARS);
        assertThat(picture().days()).extracting(DayBand::label).containsExactly("Mon 6 Sep", "Tue 7 Sep");
    }

    @Test
    void theAxisRunsFromFiveToMidnightAndOnWhereSomebodyWorksOn() {
        assertThat(picture().fromMin()).isEqualTo(300);
        // Crew B is back at 00:20.
        assertThat(picture().toMin()).isEqualTo(25 * 60);
    }

    @Test
    void aVisitBarKnowsItsMedianItsSlackAndItsSite() {
        WeekBar bar = lane(0, "Crew A").bars().get(5);
        assertThat(bar.kind()).isEqualTo(BarKind.VISIT);
        assertThat(bar.fromMin()).isEqualTo(15 * 60 + 25);
        assertThat(bar.toMin()).isEqualTo(16 * 60 + 30);
        assertThat(bar.medianMin()).isEqualTo(OptionalInt.of(16 * 60 + 15));
        assertThat(bar.slackMin()).isEqualTo(OptionalInt.of(40));
        assertThat(bar.site()).contains("PEL-01");
        assertThat(bar.spoken()).isEqualTo("Crew A, Mon 6 Sep: Set nets, PEL-01, 15:25 to 16:30 (1 h 5 min)");
    }

    @Test
    void aKitSetIsUsedUncleanedTreatedDryingAndFreeAcrossDays() {
        assertThat(lane(0, "Kit K1").bars())
                .extracting(WeekBar::kind)
                .containsExactly(BarKind.USED, BarKind.DIRTY, BarKind.TREATING, BarKind.DRYING);
        WeekBar drying = lane(0, "Kit K1").bars().get(3);
        assertThat(drying.fromMin()).isEqualTo(18 * 60 + 15);
        assertThat(drying.toMin()).isEqualTo(picture().toMin());
        assertThat(lane(1, "Kit K1").bars())
                .extracting(WeekBar::kind)
                .containsExactly(BarKind.DRYING, BarKind.RELEASED);
        assertThat(lane(1, "Kit K1").bars().get(1).fromMin()).isEqualTo(6 * 60 + 15);
    }

    @Test
    void aSetThatIsNeverCleanedStaysUncleaned() {
        assertThat(lane(1, "Kit K4").bars()).extracting(WeekBar::kind).containsExactly(BarKind.DIRTY);
    }

    @Test
    void nightStandsBehindEveryDayAndLowWaterWhereATidalSiteIsVisited() {
        assertThat(picture().days().get(0).shades())
                .extracting(DayBand.Shade::kind)
                .containsExactly(
                        DayBand.ShadeKind.NIGHT,
                        DayBand.ShadeKind.DUSK,
                        DayBand.ShadeKind.NIGHT,
                        DayBand.ShadeKind.LOW_WATER);
        DayBand.Shade low = picture().days().get(0).shades().get(3);
        assertThat(low.fromMin()).isEqualTo(14 * 60 + 20);
        assertThat(low.toMin()).isEqualTo(18 * 60 + 20);
        assertThat(picture().days().get(0).sky()).startsWith("light from 06:25, sunset 19:48, dark from 20:33");
    }

    @Test
    void selectingABarSelectsItsSiteAndTellsWhyItIsThere() {
        WeekRow set = week.rowsProperty().get().get(5);
        week.select(set.id());
        assertThat(session.selection()).isEqualTo(new Selection(Optional.of("PEL-01"), Optional.of(set.id())));
        assertThat(fact("Why here")).isEqualTo("low water at Pell mouth 16:20, two hours either side");
        assertThat(fact("Window")).isEqualTo("Mon 14:20 to Mon 18:20");
        assertThat(fact("Slack")).startsWith("could start 40 min later");
        assertThat(fact("Permission and conditions"))
                .isEqualTo("NOT AUTHORISED: permit P-PEL is pending\nKey 4.\non the land from 07:15");
        assertThat(fact("Method")).contains("by rule 15 of survey-method").contains("max depth: 0.48, rule says <=0.8");
        assertThat(fact("When")).contains("Half of such visits are done by 16:15, four of five by 16:30");
    }

    @Test
    void selectingATreatmentTellsItsStepsAndItsEvidence() {
        week.select(lane(0, "Kit K1").bars().get(2).id());
        assertThat(session.selection().site()).isEmpty();
        assertThat(fact("What")).isEqualTo("Cleaning of kit set K1 after PEL");
        assertThat(fact("Steps")).contains("15 min  hot dip, 50 °C (hot-bay)").contains("12 h  hang to dry");
        assertThat(fact("Evidence behind it")).isEqualTo("LTW on hard items: hot-dip-50, grade B");
    }

    @Test
    void selectingASiteWithoutABarTellsWhyItIsNotPlaced() {
        session.selectSite("OUN-02");
        assertThat(fact("Not placed, because")).isEqualTo("consent was refused");
    }

    @Test
    void arrowKeysGoThroughAllBars() {
        week.step(WeekPicture.Step.RIGHT);
        assertThat(session.selection().bar())
                .contains(week.rowsProperty().get().get(0).id());
        for (int i = 0; i < 20; i++) {
            week.step(WeekPicture.Step.RIGHT);
        }
        assertThat(session.selection().bar())
                .contains(week.rowsProperty().get().get(8).id());
        week.step(WeekPicture.Step.DOWN);
        assertThat(selectedLabel()).isEqualTo("PEL-02 mark");
        for (int i = 0; i < 20; i++) {
            week.step(WeekPicture.Step.DOWN);
        }
        assertThat(picture().days().get(1).lanes()).last().satisfies(last -> assertThat(last.bars())
                .extracting(WeekBar::id)
                .contains(session.selection().bar().orElseThrow()));
        for (int i = 0; i < 40; i++) {
            week.step(WeekPicture.Step.UP);
        }
        assertThat(lane(0, "Crew A").bars())
                .extracting(WeekBar::id)
                .contains(session.selection().bar().orElseThrow());
    }

    private String selectedLabel() {
        return picture()
                .bar(session.selection().bar().orElseThrow())
                .orElseThrow()
                .label();
    }

    @Test
    void timesFollowTheClockOnTheWallWhenClocksChange() {
        // Clocks go back an hour at 01:00 on Sunday 31 October 2027 in this zone (tz database).
        ZoneId zone = ZoneId.of("Atlantic/Azores");
        DayClock sunday = new DayClock(LocalDate.of(2027, 10, 31), zone);
        Instant eight = LocalDate.of(2027, 10, 31).atTime(8, 0).atZone(zone).toInstant();
        assertThat(sunday.minutes(eight)).isEqualTo(480);
    }

    @Test
    void withoutAPlanTheReasonIsGiven() {
        session.open(java.nio.file.Path.of("broken"));
        assertThat(week.pictureProperty().get()).isEmpty();
        assertThat(week.rowsProperty().get()).isEqualTo(List.of());
        assertThat(week.emptyWordsProperty().get())
                .isEqualTo("The week is not planned: 1 error in the way. See the problems (Ctrl+3).");
        week.step(WeekPicture.Step.RIGHT);
    }

    @Test
    void zoomStaysWithinItsBounds() {
        for (int i = 0; i < 50; i++) {
            week.zoomIn();
        }
        assertThat(week.zoomProperty().get()).isEqualTo(12);
        for (int i = 0; i < 50; i++) {
            week.zoomOut();
        }
        assertThat(week.zoomProperty().get()).isEqualTo(1);
    }
}
