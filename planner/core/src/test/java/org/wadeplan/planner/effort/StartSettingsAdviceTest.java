package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wadeplan.planner.effort.EffortFixture.SETTINGS;
import static org.wadeplan.planner.effort.EffortFixture.planner;
import static org.wadeplan.planner.effort.EffortFixture.site;
import static org.wadeplan.planner.effort.EffortFixture.withSettings;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Site;

class StartSettingsAdviceTest {

    private static final OptionalDouble NOT_KNOWN = OptionalDouble.empty();

    @Test
    void givesTheLatestSettingsWithTheVoltageForTodaysWaterBesideThem() {
        StartSettings settings = settings(
                planner(
                        ambient("2026-09-08", SETTINGS, 100),
                        ambient("2024-09-07", new ElectricSettings(30, 8, 24, 400), 96)),
                site(50));
        assertThat(settings)
                .isEqualTo(new StartSettings(
                        SETTINGS,
                        LocalDate.of(2026, 9, 8),
                        OptionalDouble.of(100),
                        OptionalDouble.of(50),
                        // 165 x 100 x (50 + 115) / (50 x (100 + 115)) = 253.26
                        OptionalInt.of(253),
                        "On 2026-09-08: 60 Hz, 4 ms, 24 % duty, 165 V. Then 100 µS/cm ambient. For 50 µS/cm today power "
                                + "transfer (fish 115 µS/cm; Kolz 1989, Miranda and Dolan 2003) gives 253 V. Keep frequency "
                                + "and duty as they were: catches compare only then. Ceiling from 0 µS/cm: 1100 V, testing begins at 100 V "
                                + "(invented sheet). This is advice, never an order: start "
                                + "low, raise the voltage first and only as far as fish need, stop rising once they recover "
                                + "quickly. The operator decides; the local code, the permit and their ceilings come first.",
                        List.of("Where salmonids over 300 mm may be met, smooth DC or at most 30 Hz harms fewer "
                                + "(Taube 1992); last time it was 60 Hz."),
                        Optional.of(EffortFixture.CEILINGS.get(0))));
    }

    /** SC25 120 at 15.5 degrees is 97.2 ambient (demo scenario 4.6), so a reading taken for ambient would mislead. */
    @Test
    void turnsAReadingAt25DegreesIntoAmbientAndNamesTheRule() {
        PastVisit visit = withSettings(
                "2026-09-08",
                SETTINGS,
                OptionalDouble.of(120),
                Optional.of(ConductivityBasis.SPECIFIC_25C),
                OptionalDouble.of(15.5));
        StartSettings settings = settings(planner(visit), site(97.2));
        assertThat(settings.lastAmbientUsCm()).hasValueCloseTo(97.2, within(1e-9));
        assertThat(settings.adviceVoltageV()).hasValue(165);
        assertThat(settings.explanation())
                .contains("120 µS/cm at 25 °C, which is 97 µS/cm ambient at 15.5 °C (linear, 2 % per degree)");
    }

    @Test
    void advisesNoVoltageWhereTheAmbientConductivityCannotBeMadeOut() {
        OptionalDouble read = OptionalDouble.of(120);
        assertThat(withoutAdvice(withSettings("2026-09-08", SETTINGS, NOT_KNOWN, Optional.empty(), NOT_KNOWN)))
                .contains("The conductivity was not recorded then.");
        assertThat(withoutAdvice(withSettings("2026-09-08", SETTINGS, read, Optional.empty(), NOT_KNOWN)))
                .contains("nobody wrote whether ambient or at 25 °C");
        assertThat(withoutAdvice(withSettings(
                        "2026-09-08", SETTINGS, read, Optional.of(ConductivityBasis.SPECIFIC_25C), NOT_KNOWN)))
                .contains("cannot be turned into ambient");
    }

    @ParameterizedTest
    @CsvSource({
        "29.9, true, 'below about 30'",
        "30, false, 'below about 30'",
        "500, false, 'above about 500'",
        "500.1, true, 'above about 500'",
        "1000, true, 'above about 500'",
        "1000.1, true, 'above about 1000'",
        "1000.1, false, 'above about 500'",
        "11.9, true, 'tested from 12 to 1030'",
        "12, false, 'tested from 12 to 1030'",
        "1030, false, 'tested from 12 to 1030'",
        "1030.1, true, 'tested from 12 to 1030'"
    })
    void cautionsAboutConductivityFromItsLimits(double ambientUsCm, boolean expected, String words) {
        List<String> cautions = settings(planner(ambient("2026-09-08", SETTINGS, 100)), site(ambientUsCm))
                .cautions();
        assertThat(cautions.stream().anyMatch(caution -> caution.contains(words)))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"18.0, false", "18.1, true"})
    void cautionsAboutWaterWarmerThan18Degrees(double tempC, boolean expected) {
        Site warm = site("BRN-01", OptionalDouble.of(4), OptionalDouble.of(96), OptionalDouble.of(tempC));
        List<String> cautions =
                settings(planner(ambient("2026-09-08", SETTINGS, 100)), warm).cautions();
        assertThat(cautions.stream().anyMatch(caution -> caution.contains("no shocking above 18 °C")))
                .isEqualTo(expected);
    }

    @Test
    void pointsOutRecordedSettingsThatContradictOneAnother() {
        ElectricSettings slip = new ElectricSettings(60, 8, 24, 165);
        assertThat(settings(planner(ambient("2026-09-08", slip, 100)), site(96)).cautions())
                .contains("The record contradicts itself: 60 Hz and 8 ms make 48 % duty, and it says 24 %.");
    }

    @Test
    void withoutAnEarlierVisitThereAreNoSettings() {
        assertThat(planner().visit(site(96), EffortFixture.EFISH).value().flatMap(VisitEffort::settings))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"de-DE", "tr-TR"})
    void saysTheSameInEveryLocale(String tag) {
        EffortPlanner planner = planner(ambient("2026-09-08", SETTINGS, 100.5));
        StartSettings expected = settings(planner, site(96.5));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(settings(planner, site(96.5))).isEqualTo(expected);
        } finally {
            Locale.setDefault(before);
        }
    }

    private static String withoutAdvice(PastVisit visit) {
        StartSettings settings = settings(planner(visit), site(96));
        assertThat(settings.adviceVoltageV()).isEmpty();
        return settings.explanation();
    }

    private static PastVisit ambient(String date, ElectricSettings settings, double ambientUsCm) {
        return withSettings(
                date, settings, OptionalDouble.of(ambientUsCm), Optional.of(ConductivityBasis.AMBIENT), NOT_KNOWN);
    }

    private static StartSettings settings(EffortPlanner planner, Site site) {
        return planner.visit(site, EffortFixture.EFISH)
                .value()
                .flatMap(VisitEffort::settings)
                .orElseThrow();
    }
}
