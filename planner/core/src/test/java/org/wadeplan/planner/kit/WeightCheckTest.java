package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.kit.DayWeights.Walk;
import org.wadeplan.planner.kit.DayWeights.Weighed;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;

/** Weights of the demo round's invented masses, added up by hand. */
class WeightCheckTest {

    private static final LocalDate WEDNESDAY = LocalDate.of(2027, 9, 8);
    private static final List<CrewDay> DAYS = AgreedWeekKit.PLAN.week().crewDays();

    private static DayWeights weights(Round round, List<LoadLine> lines) {
        return WeightCheck.of(round, DAYS, new KitPlan(List.of(new CrewDayLoad("B", WEDNESDAY, lines)), List.of()))
                .get(0);
    }

    private static LoadLine line(String container, String kind, double quantity, String site, String... items) {
        return new LoadLine(
                container, kind, kind, quantity, "each", List.of(items), java.util.Optional.empty(), List.of(site));
    }

    /** T2: 5 fykes of 4.5 kg, the torn one too, and 12 traps of 0.8 kg are 36.6 kg. Its fykes are not counted twice. */
    @Test
    void weighsAKitSetWholeAndOnce() {
        DayWeights day = weights(
                AgreedWeekKit.ROUND,
                List.of(
                        line("kit set", "kit-set", 1, "PEL-01", "T2"),
                        line("trap crate", "fyke", 5, "PEL-01", "T2-FYKE")));
        assertThat(day.gear().kg()).isCloseTo(36.6, within(1e-9));
        assertThat(day.totalKg()).isCloseTo(225 + 36.6, within(1e-9));
    }

    /** 3 of 8 loose buckets of 0.9 kg; 9 L of water. */
    @Test
    void weighsLooseThingsByTheOneAndConsumablesByTheUnit() {
        DayWeights day = weights(
                AgreedWeekKit.ROUND,
                List.of(
                        line("kit set bag", "bucket", 3, "PEL-01", "X-BUCKET"),
                        line("safety bag", "drinking-water-l", 9, "TOL-03")));
        assertThat(day.gear()).isEqualTo(new Weighed(2.7 + 9, List.of()));
        assertThat(day.walks())
                .extracting(Walk::site, walk -> walk.gear().kg())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("TOL-03", 9.0),
                        org.assertj.core.groups.Tuple.tuple("PEL-01", 2.7));
    }

    @Test
    void namesWhatNobodyWeighed() {
        DayWeights day = weights(AgreedWeekKit.ROUND, List.of(line("safety bag", "line-knife", 3, "PEL-01", "LK1")));
        assertThat(day.gear()).isEqualTo(new Weighed(0, List.of("line knife")));
    }

    @Test
    void leavesOutTheVehicleAndThePowderOfTheDepot() {
        DayWeights day = weights(
                AgreedWeekKit.ROUND,
                List.of(line("vehicle", "vehicle", 1, "", "V2"), line("depot: oxidiser tubs", "oxidiser", 1.2, "")));
        assertThat(day.gear()).isEqualTo(new Weighed(0, List.of()));
    }

    /** 650 kg of payload: three people at 75 kg leave 425 kg. */
    @Test
    void holdsTheLoadAgainstThePayload() {
        LoadLine exactly = line("safety bag", "drinking-water-l", 425, "PEL-01");
        assertThat(weights(AgreedWeekKit.ROUND, List.of(exactly)).overPayload()).isFalse();
        LoadLine more = line("safety bag", "drinking-water-l", 425.1, "PEL-01");
        assertThat(weights(AgreedWeekKit.ROUND, List.of(more)).overPayload()).isTrue();
    }

    /** 16 kg: the lower filter figure of HSE INDG143 for a lift close to the body at waist height (from memory). */
    @Test
    void callsMoreThanSixteenKilogramsEachHeavy() {
        assertThat(new Walk("X", OptionalDouble.of(100), 3, new Weighed(48, List.of())).heavy())
                .isFalse();
        assertThat(new Walk("X", OptionalDouble.of(100), 3, new Weighed(48.1, List.of())).heavy())
                .isTrue();
    }
}
