package org.wadeplan.planner.kit.wayout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.kit.AgreedWeekKit;
import org.wadeplan.planner.kit.wayout.WayOut.Result;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.Round;

/** Ways out of the troubles of the Ilvermoor scenario, section 4.9 (invented, worked out by hand). */
class WaysOutTest {

    private static final List<ShortageWays> ALL = WaysOut.of(AgreedWeekKit.ROUND, AgreedWeekKit.PLAN);

    private static List<WayOut> ways(String kind) {
        return ALL.stream()
                .filter(one -> one.shortage().kind().equals(kind))
                .findFirst()
                .orElseThrow()
                .ways();
    }

    /** Trouble 1: service E1, or start at 12:00 with E3, or the reserve day; sharing E2 ends after sunset. */
    @Test
    void ranksTheWaysOutOfWednesdaysUnit() {
        assertThat(ways("backpack-unit"))
                .extracting(way -> way.result() + " " + way.cost() + " " + way.what())
                .containsExactly(
                        "OPEN WORKSHOP have the service of E1 renewed before Wed 8 Sep 06:50 (service due, last valid day"
                                + " Tue 2027-09-07)",
                        "OPEN HIRE crew A starts at 12:00 on Wed 8 Sep with E3 (hire unit, there from 12:00)",
                        "OPEN RESERVE_DAY OUN-01 to reserve day Mon 13 Sep, crew B in V1",
                        "REFUSED NONE crew A starts at 15:05 on Wed 8 Sep with E2 after crew B (free and treated 15:05)");
    }

    /** Trouble 1 (b): OUN-01 12:50 to 18:10, done 19:45, and rain is forecast from 15:00. */
    @Test
    void saysWhatALateStartComesTo() {
        assertThat(ways("backpack-unit").get(1).found())
                .startsWith("nothing else got worse; OUN-01 12:50 to 18:10, all cleaned 19:45; K3 is cleaned Thu 9 Sep"
                        + " 16:05 instead; but rain is forecast: 18 mm")
                .contains("rain from 15:00");
    }

    @Test
    void refusesToShareIntoTheDark() {
        WayOut share = ways("backpack-unit").get(3);
        assertThat(share.found()).contains("OUN-01 would last from 15:40 to 21:00, after sunset at 19:4");
    }

    /** Crew A has one current first-aider on that day, because Yusra's certificate ends on the 8th (trouble 2). */
    @Test
    void namesWhyAPlainerMoveWasRefused() {
        assertThat(ways("backpack-unit").get(2).found())
                .contains("1 first-aiders")
                .contains("crew A");
    }

    /** Trouble 13: leaving out Monday's clean saves 1.2 kg, and 0.8 kg are still short. */
    @Test
    void showsWhatAnOptionalCleaningWouldSave() {
        assertThat(ways("oxidiser")).extracting(WayOut::result).containsExactly(Result.OPEN, Result.PARTLY);
        assertThat(ways("oxidiser").get(0).what()).isEqualTo("buy 2 kg oxidiser before Wed 8 Sep");
        assertThat(ways("oxidiser").get(1).what()).startsWith("leave out the cleaning of K1 on Mon 6 Sep 15:50");
        assertThat(ways("oxidiser").get(1).found()).startsWith("still 0.8 kg short on Thu; it saves 1.2 kg");
    }

    /** Trouble 15: the cheapest way out is to recalibrate M2 before Monday's first load. */
    @Test
    void recalibratesTheMeter() {
        assertThat(ways("conductivity-meter").get(0).what())
                .startsWith("have the calibration of M2 renewed before Mon 6 Sep 07:");
        assertThat(ways("conductivity-meter").get(0).result()).isEqualTo(Result.OPEN);
    }

    @Test
    void takesAFykeOutOfTheSetThatIsCleanAndStaysIn() {
        assertThat(ways("fyke"))
                .extracting(way -> way.result() + " " + way.cost() + " " + way.what())
                .containsExactly(
                        "OPEN NONE take 1 of T1-FYKE out of T1 into T2 before Wed 8 Sep",
                        "OPEN WORKSHOP have T2-FYKE6 repaired (wing torn), clean and tried out, before Wed 8 Sep");
    }

    @Test
    void repairsTheLampAndBuysTheRest() {
        assertThat(ways("spotlight").get(0).what()).startsWith("have L2 repaired (lamp fails at 40 min)");
        assertThat(ways("anaesthetic").get(0).what()).isEqualTo("buy 20 mL anaesthetic before Thu 9 Sep");
        assertThat(ways("densiometer")).extracting(WayOut::cost).startsWith(WayCost.HIRE, WayCost.BUY);
    }

    /** Trouble 17: V1 is back in the afternoon and free; crew B drives off at 17:00 after 20 min for the mats. */
    @Test
    void givesTheOtherVehicleToCrewBOnFriday() {
        List<WaysOut.VehicleFinding> findings = WaysOut.vehicles(AgreedWeekKit.ROUND, AgreedWeekKit.PLAN);
        assertThat(findings).hasSize(1);
        WayOut first = findings.get(0).ways().get(0);
        assertThat(first.result()).isEqualTo(Result.OPEN);
        assertThat(first.cost()).isEqualTo(WayCost.NONE);
        assertThat(first.what()).startsWith("take V1: back from crew A at 15:").contains("drives off at 17:00");
    }

    /** A round without agreed lines is tried by its planned week, written as if it had been agreed. */
    @Test
    void triesAPlannedWeekToo() {
        assertThat(WaysOut.of(AgreedWeekKit.ROUND.with(FieldLog.EMPTY), AgreedWeekKit.PLAN))
                .isEqualTo(ALL);
    }

    @Test
    void findsNothingToTryWhereNothingIsShort() {
        Round resolved = DemoRound.resolved().with(AgreedWeekKit.ROUND.log());
        RoundPlan plan = AgreedWeekKit.of(resolved);
        assertThat(WaysOut.of(resolved, plan)).isEmpty();
        assertThat(WaysOut.vehicles(resolved, plan)).isEmpty();
    }

    @Test
    void ordersOpenWaysByCost() {
        ALL.forEach(one -> {
            List<WayCost> open = one.ways().stream()
                    .filter(way -> way.result() == Result.OPEN)
                    .map(WayOut::cost)
                    .toList();
            assertThat(open).as(one.shortage().kind()).isNotEmpty().isSorted();
        });
    }
}
