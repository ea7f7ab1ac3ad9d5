package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.effort.EffortFixture.planner;
import static org.wadeplan.planner.effort.EffortFixture.shocked;
import static org.wadeplan.planner.effort.EffortFixture.site;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ElectricLimits;
import org.wadeplan.planner.round.ElectricRules;
import org.wadeplan.planner.round.PackPower;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Site;

class BatteryPlanTest {

    @Test
    void explainsTheSum() {
        assertThat(need(planner(shocked("BRN-01", 2100, 4), shocked("BRN-01", 2201, 4)), site(96)))
                .isEqualTo(
                        new BatteryNeed(
                                2151,
                                2400,
                                1.25,
                                2,
                                "2 earlier visits here (median 2151 s), and for the rest of three the model: 538 s for each "
                                        + "metre of width (median of 2 visits of the round) times 4 m: 2151 s of button time; with "
                                        + "a reserve of 1.25 times, by 2400 s from a pack (96 µS/cm, row up to 150), that is 1.12, so 2 packs"));
    }

    /** 107.52 Wh at 165 V across 60 ohm x 100/96 with 24 % duty: 104.5 W mean, 61.7 min; at 10 ohm a sixth of that. */
    @ParameterizedTest
    @CsvSource({"60, 2400, '; by power 3702 s'", "10, 617, '; the table says 2400 s'"})
    void theLesserOfTableAndPowerCounts(double ohm, int usableS, String words) {
        EffortRules tabled = EffortFixture.rules();
        EffortRules measured = new EffortRules(
                tabled.conductivityRule(),
                tabled.powerTransfer(),
                tabled.reserveFactor(),
                tabled.packSeconds(),
                tabled.voltageCeilings(),
                new ElectricRules(ElectricLimits.DEFAULT, Optional.of(new PackPower(168, 0.8, 0.8, ohm, "invented"))));
        PastVisit set = EffortFixture.withSettings(
                "2026-09-08",
                EffortFixture.SETTINGS,
                OptionalDouble.of(96),
                Optional.of(ConductivityBasis.AMBIENT),
                OptionalDouble.empty());
        BatteryNeed need = need(
                EffortPlanner.of(measured, List.of(set, shocked("BRN-01", 2000, 4)), EffortFixture.METHODS), site(96));
        assertThat(need.usableSPerPack()).isEqualTo(usableS);
        assertThat(need.explanation()).contains(words);
    }

    @ParameterizedTest
    @CsvSource({"1919, 1", "1920, 1", "1921, 2", "3840, 2", "3841, 3", "0, 1"})
    void carriesAWholePackMoreFromTheFirstSecondThatDoesNotFit(int shockS, int packs) {
        assertThat(need(planner(shocked("BRN-01", shockS, 4)), site(96)).packs())
                .isEqualTo(packs);
    }

    @ParameterizedTest
    @CsvSource({"150, 2400", "150.1, 2000", "300, 2000", "300.1, 1700", "600, 1400"})
    void readsTheRowUpToAndIncludingItsConductivity(double ambientUsCm, int usableS) {
        assertThat(need(planner(shocked("BRN-01", 2000, 4)), site(ambientUsCm)).usableSPerPack())
                .isEqualTo(usableS);
    }

    @Test
    void modelsASiteWithoutHistoryOnTheRoundsOtherVisitsAndSaysSo() {
        Site newSite = site("OUN-02B", OptionalDouble.of(6), OptionalDouble.of(358), OptionalDouble.empty());
        BatteryNeed need = need(
                planner(shocked("BRN-01", 2000, 4), shocked("OUN-01", 2400, 5), shocked("OUN-03", 3500, 7)), newSite);
        assertThat(need.expectedShockS()).isEqualTo(3000);
        assertThat(need.packs()).isEqualTo(3);
        assertThat(need.explanation())
                .startsWith(
                        "modelled, no history here: 500 s for each metre of width (median of 3 visits of the round) "
                                + "times 6 m: 3000 s");
    }

    @Test
    void anUnknownConductivityIsPlannedWithTheLeastThatAPackGives() {
        Site unknown = site("BRN-01", OptionalDouble.of(4), OptionalDouble.empty(), OptionalDouble.empty());
        BatteryNeed need = need(planner(shocked("BRN-01", 2000, 4)), unknown);
        assertThat(need.usableSPerPack()).isEqualTo(1400);
        assertThat(need.explanation()).contains("conductivity not known, so the least of the table");
    }

    @Test
    void refusesToGuessAboveTheTable() {
        Checked<VisitEffort> visit = planner(shocked("BRN-01", 2000, 4)).visit(site(600.1), EffortFixture.EFISH);
        assertThat(visit.value().flatMap(VisitEffort::batteries)).isEmpty();
        assertThat(visit.problems())
                .extracting(Problem::sentence)
                .containsExactly("sites.csv, BRN-01, column conductivity_us_cm: 600.1 µS/cm is above the last row of "
                        + "pack_seconds.csv (600): packs run down faster there than anyone has written down, so the "
                        + "number of packs cannot be worked out. Allowed: what the number of packs rests on. "
                        + "Do: add a row that was measured in such water, or use another method");
    }

    @Test
    void saysWhatIsMissingWhereNothingTellsTheButtonTime() {
        Checked<VisitEffort> visit = planner().visit(site(96), EffortFixture.EFISH);
        assertThat(visit.value().flatMap(VisitEffort::batteries)).isEmpty();
        assertThat(visit.problems()).extracting(Problem::code).containsExactly("shock-time-unknown");
    }

    @Test
    void methodsWithoutCurrentNeedNoPacksAndNoSettings() {
        VisitEffort visit =
                planner().visit(site(96), EffortFixture.TRAP).value().orElseThrow();
        assertThat(visit.batteries()).isEmpty();
        assertThat(visit.settings()).isEmpty();
    }

    private static BatteryNeed need(EffortPlanner planner, Site site) {
        return planner.visit(site, EffortFixture.EFISH)
                .value()
                .flatMap(VisitEffort::batteries)
                .orElseThrow();
    }
}
