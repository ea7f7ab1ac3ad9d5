package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.decon.RoundCopies;
import org.wadeplan.planner.effort.Compared.Likeness;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.VoltageCeiling;

/** The whole sheet of sites of the demo round, and what a change of water makes of it. */
class EffortSheetDemoRoundTest {

    private static final Round ROUND = DemoRound.resolved();

    @Test
    void carriesLastVisitsSettingsBesideTodaysWater() {
        EffortSheet sheet = sheet(ROUND, "BRN-01", ROUND.header().firstDay());
        assertThat(sheet.settingsRows())
                .extracting(Compared::what, Compared::last, Compared::today, Compared::likeness)
                .containsExactly(
                        tuple("ambient conductivity", "96 µS/cm", "96 µS/cm", Likeness.SAME),
                        tuple("water temperature", "15.2 °C", "15.5 °C", Likeness.SAME),
                        tuple("voltage", "165 V", "advice 165 V", Likeness.SAME),
                        tuple("frequency", "60 Hz", "keep 60 Hz", Likeness.SAME),
                        tuple("pulse", "4 ms", "keep 4 ms", Likeness.SAME),
                        tuple("duty", "24 %", "keep 24 %", Likeness.SAME));
        assertThat(sheet.cautions()).containsAll(ElectricCautions.ALWAYS);
        assertThat(sheet.pace()).hasSize(10).last().isEqualTo(new PaceStep('J', 215, 2150));
        assertThat(sheet.packHealth().orElseThrow().words())
                .isEqualTo("P1 98 %, P2 95 %: 4632 s by their health, 2688 s asked with the reserve");
        assertThat(sheet.comparability().sentence())
                .isEqualTo(
                        "Compares with 2026-09-08: same reach, method, settings, effort, season. Write down what turns"
                                + " out otherwise.");
    }

    /** 165 V at 96 uS/cm is 165 x 96 (48 + 115)/(48 (96 + 115)) = 254.9 V at 48. */
    @Test
    void softerWaterAsksForMoreVoltageAndSaysByHowMuch() {
        Round softer = measured(ROUND, "BRN-01", 48, 15.5);
        EffortSheet sheet = sheet(softer, "BRN-01", ROUND.header().firstDay());
        assertThat(sheet.settingsRows())
                .contains(
                        new Compared("ambient conductivity", "96 µS/cm", "48 µS/cm", Likeness.DIFFERS, "-48 µS/cm"),
                        new Compared("voltage", "165 V", "advice 255 V", Likeness.DIFFERS, "+90 V"));
    }

    @Test
    void whatDiffersIsNamedWithBothValues() {
        EffortSheet late = sheet(ROUND, "BRN-01", LocalDate.of(2027, 10, 20));
        assertThat(late.comparability().sentence())
                .isEqualTo(
                        "Compares only in part with 2026-09-08: same reach, method, settings, effort. Differs: season"
                                + " (2026-09-08 then, 2027-10-20 today). Write down what turns out otherwise.");
        assertThat(late.comparability().rows())
                .filteredOn(row -> row.what().equals("season"))
                .containsExactly(new Compared(
                        "season", "2026-09-08", "2027-10-20", Likeness.DIFFERS, "42 days apart in the year"));
    }

    @Test
    void theTurnOfTheYearIsNoSeasonApart() {
        Comparability newYear = Comparability.of(
                ROUND, ROUND.site("BRN-01").orElseThrow(), "EFISH", LocalDate.of(2028, 8, 30), Optional.empty());
        assertThat(newYear.rows())
                .filteredOn(row -> row.what().equals("season"))
                .extracting(Compared::difference)
                .containsExactly("9 days apart in the year");
    }

    @Test
    void aSiteWithoutHistorySaysSo() {
        EffortSheet sheet = sheet(ROUND, "OUN-02B", ROUND.header().firstDay());
        assertThat(sheet.comparability())
                .isEqualTo(new Comparability(
                        Optional.empty(),
                        List.of(),
                        "No history: this visit cannot be compared with an earlier one yet."));
        assertThat(sheet.settingsRows()).isEmpty();
        assertThat(sheet.cautions()).isEqualTo(ElectricCautions.ALWAYS);
    }

    @Test
    void anotherMethodThanLastTimeDoesNotCompare() {
        EffortSheet dry = sheet(ROUND, "TOL-02", ROUND.header().firstDay());
        assertThat(dry.effort().electric(ROUND)).isFalse();
        assertThat(dry.cautions()).isEmpty();
        Comparability shocked = Comparability.of(
                ROUND,
                ROUND.site("BRN-03").orElseThrow(),
                "EFISH",
                ROUND.header().firstDay(),
                Optional.empty());
        assertThat(shocked.sentence()).contains("Differs: method (TRAP then, EFISH today)");
    }

    @Test
    void warmWaterAndABasisNobodyWroteAreFindings() {
        Round warm = measured(ROUND, "BRN-01", 96, 23);
        assertThat(EffortPlanner.findings(warm, MethodChooser.decide(warm)))
                .extracting(Problem::sentence)
                .containsExactly(
                        "sites.csv, BRN-01, column water_temp_c: STOP: water up to 23 °C, and current stays off from"
                                + " 23 °C on (invented agency rule, demo only). Measure; start at dawn, another day, or another"
                                + " method. Allowed: water below 23 °C. Do: plan it for dawn or another day, or change the method");
        PastVisit forgotten = EffortFixture.withSettings(
                "2026-09-09", EffortFixture.SETTINGS, OptionalDouble.of(120), Optional.empty(), OptionalDouble.empty());
        assertThat(SettingsFindings.of(
                        RoundCopies.with(ROUND, "pastVisits", List.of(forgotten)), List.of(), new PowerTransfer(115)))
                .extracting(Problem::sentence)
                .containsExactly(
                        "past_visits.csv, BRN-01 2026-09-09, column conductivity_basis: 120 µS/cm were written down,"
                                + " and not whether ambient or referred to 25 °C. Allowed: ambient or 25C. Do: look it up in the"
                                + " field sheet or the meter's manual; until then no voltage is advised from this visit");
    }

    @Test
    void adviceAboveTheCeilingIsAFinding() {
        Store store = ROUND.store();
        VoltageCeiling low = new VoltageCeiling(
                0, 200, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "invented");
        Round soft = RoundCopies.with(
                measured(ROUND, "BRN-01", 48, 15.5),
                "store",
                new Store(store.kitSets(), store.items(), store.needs(), store.packSeconds(), List.of(low)));
        assertThat(EffortPlanner.findings(soft, MethodChooser.decide(soft)))
                .filteredOn(problem -> problem.code().equals("advice-above-ceiling"))
                .extracting(Problem::sentence)
                .contains(
                        "sites.csv, BRN-01, column conductivity_us_cm: the voltage that worked on 2026-09-08, rescaled to"
                                + " today's water, lies above the ceiling of 200 V, so none is advised. Allowed: water in which"
                                + " the ceiling is enough. Do: stay below the ceiling; where fish do not respond, use another"
                                + " method");
    }

    private static EffortSheet sheet(Round round, String site, LocalDate date) {
        VisitEffort effort = EffortPlanner.plan(round, MethodChooser.decide(round)).stream()
                .filter(known -> known.site().equals(site))
                .findFirst()
                .orElseThrow();
        return EffortSheet.of(round, round.site(site).orElseThrow(), effort, date, 10);
    }

    private static Round measured(Round round, String id, double ambientUsCm, double tempC) {
        Site site = round.site(id).orElseThrow();
        Conditions old = site.conditions();
        return round.with(site.with(new Conditions(
                old.widthM(),
                old.wetState(),
                old.depthVelocityM2S(),
                old.maxDepthM(),
                old.maxDepthSdM(),
                OptionalDouble.of(ambientUsCm),
                old.conductivitySdUsCm(),
                old.clarityM(),
                OptionalDouble.of(tempC))));
    }
}
