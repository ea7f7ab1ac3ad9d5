package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wadeplan.planner.method.TestTables.dmn;
import static org.wadeplan.planner.method.TestTables.input;
import static org.wadeplan.planner.method.TestTables.methodOutput;
import static org.wadeplan.planner.method.TestTables.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.planner.method.MethodOutcome.Chosen;
import org.wadeplan.planner.method.MethodOutcome.Clash;
import org.wadeplan.planner.method.MethodOutcome.FailedCell;
import org.wadeplan.planner.method.MethodOutcome.NoRule;
import org.wadeplan.planner.method.MethodOutcome.Reading;
import org.wadeplan.planner.method.MethodOutcome.Undecided;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Consent.ConsentStatus;
import org.wadeplan.planner.round.Site;

class MethodChooserTest {

    @Test
    void namesTheRuleAndReadsEveryCellInWords() {
        assertThat(decide(TestTables.corrected(), "TOL-03"))
                .isEqualTo(new Chosen(
                        6,
                        "r6",
                        "EFISH_AM",
                        OptionalInt.of(3),
                        List.of(
                                new Reading("wet state", "flowing", "flowing"),
                                new Reading("depth times speed", "0.28 m²/s", "at most 0.9 m²/s"),
                                new Reading("deepest point", "0.6 m", "at most 0.8 m"),
                                new Reading("ambient conductivity", "205 µS/cm", "at least 15 and at most 600 µS/cm"),
                                new Reading("clarity", "0.9 m", "at least 0.5 m"),
                                new Reading("water temperature", "21.4 °C", "above 20 and at most 23 °C"),
                                new Reading("night access", "yes", "any"))));
    }

    /** The scenario, 4.3: the table as received leaves soft water out and contradicts itself between 0.7 and 0.8 m. */
    @Test
    void theTableAsReceivedLeavesTwoSitesOutAndContradictsItselfAtOne() {
        DecisionTable table = TestTables.received();
        NoRule softWater = (NoRule) decide(table, "BRN-03");
        assertThat(softWater.failures()).hasSize(14);
        assertThat(softWater.failures().get(4))
                .isEqualTo(new FailedCell(5, "ambient conductivity", "14 µS/cm", "at least 15 and at most 600 µS/cm"));
        assertThat(decide(table, "HSK-02")).isInstanceOf(NoRule.class);
        assertThat(decide(table, "BRN-02")).isEqualTo(new Clash(List.of(5, 12), List.of("EFISH", "TRAP")));
        assertThat(ScenarioSites.all().stream()
                        .filter(site -> !(decide(table, site.id()) instanceof Chosen))
                        .map(Site::id))
                .containsExactly("BRN-02", "BRN-03", "HSK-02");
    }

    @ParameterizedTest
    @CsvSource({
        "[15..600], 15, true",
        "[15..600], 600, true",
        "[15..600], 14.999, false",
        "[15..600], 600.001, false",
        "(15..600), 15, false",
        "(15..600), 600, false",
        "(15..600), 15.001, true",
        "]15..600[, 15, false",
        "]15..600[, 600, false",
        "]15..600[, 599.999, true",
        "[15..600), 15, true",
        "[15..600), 600, false",
        "(15..600], 15, false",
        "(15..600], 600, true",
        "<15, 14.999, true",
        "<15, 15, false",
        "<=15, 15, true",
        "<=15, 15.001, false",
        ">15, 15, false",
        ">15, 15.001, true",
        ">=15, 15, true",
        ">=15, 14.999, false",
        "15, 15, true",
        "15, 15.0001, false",
        "=15, 15, true",
        "!=15, 15, false",
        "!=15, 16, true",
        "-, 0, true",
        "'1, [5..6], >9', 1, true",
        "'1, [5..6], >9', 5.5, true",
        "'1, [5..6], >9', 9, false",
        "'not(1, [5..6])', 5, false",
        "'not(1, [5..6])', 4, true",
        "'not([0.8..2])', 0.8, false",
        "<=0.8, 0.8, true",
        "<=0.8, 0.80000000000000000001, false"
    })
    void holdsAtAndJustOutsideEachKindOfLimit(String cell, String value, boolean expected) {
        DecisionTable table = TestTables.read(
                        dmn("hitPolicy=\"UNIQUE\"", input("x", "number") + methodOutput() + rule(cell, "YES")))
                .value()
                .orElseThrow();
        MethodOutcome outcome =
                MethodChooser.decide(table, Map.of("x", new CaseValue.Quantity(new java.math.BigDecimal(value))));
        assertThat(outcome instanceof Chosen).isEqualTo(expected);
    }

    @Test
    void saysWhichUnknownInputsMatterAndWhatCouldComeOut() {
        assertThat(without("BRN-01", "conductivity_us_cm"))
                .isEqualTo(settled("conductivity_us_cm", List.of(5, 9, 12), List.of("EFISH", "SPOT"), List.of()));
        assertThat(without("BRN-01", "water_temp_c"))
                .isEqualTo(settled("water_temp_c", List.of(5, 6, 7), List.of("EFISH", "EFISH_AM", "DEFER"), List.of()));
    }

    /** One input is missing, and measuring it settles everything. */
    private static Undecided settled(String missing, List<Integer> rules, List<String> methods, List<String> troubles) {
        return new Undecided(List.of(missing), rules, methods, troubles, List.of(missing), true);
    }

    @Test
    void whereTwoReadingsSettleItBothAreNamed() {
        Map<String, CaseValue> dim = caseOf("OUN-03");
        dim.remove("conductivity_us_cm");
        dim.remove("clarity_m");
        Undecided undecided = (Undecided) MethodChooser.decide(TestTables.corrected(), dim);
        assertThat(undecided.measureFirst()).containsExactly("conductivity_us_cm", "clarity_m");
        assertThat(undecided.settles()).isTrue();
    }

    @Test
    void doesNotAskForWhatCannotChangeTheMethod() {
        assertThat(without("BRN-01", "night_access")).isInstanceOf(Chosen.class);
        Chosen trap = (Chosen) without("PEL-01", "conductivity_us_cm", "clarity_m", "water_temp_c", "night_access");
        assertThat(trap.possibleRules()).containsExactly(15);
        assertThat(trap.unknown()).isEmpty();
    }

    /** A soft, murky pool of a stream: trap by rule 11 in soft water, by rule 8 in middling, by rule 14 in hard. */
    @Test
    void decidesWhereEveryRuleThatCouldStillMatchNamesTheSameMethodAndSaysSo() {
        Map<String, CaseValue> values = caseOf("BRN-01");
        values.put("clarity_m", CaseValue.of(0.4));
        values.remove("conductivity_us_cm");
        Chosen chosen = (Chosen) MethodChooser.decide(TestTables.corrected(), values);
        assertThat(chosen.method()).isEqualTo("TRAP");
        assertThat(chosen.possibleRules()).containsExactly(8, 11, 14);
        assertThat(chosen.unknown()).containsExactly("conductivity_us_cm");
        assertThat(chosen.readings().get(3).value()).isEqualTo("not known");
    }

    /** With the table as received, unknown conductivity could also mean that no rule fits: that must not be hidden. */
    @Test
    void namesAGapOrAClashThatAnUnknownValueCouldHit() {
        Map<String, CaseValue> murky = caseOf("BRN-01");
        murky.put("clarity_m", CaseValue.of(0.4));
        murky.remove("conductivity_us_cm");
        assertThat(MethodChooser.decide(TestTables.received(), murky))
                .isEqualTo(settled("conductivity_us_cm", List.of(8, 11), List.of("TRAP"), List.of("no rule fits")));
        Map<String, CaseValue> deep = caseOf("BRN-01");
        deep.remove("max_depth_m");
        assertThat(((Undecided) MethodChooser.decide(TestTables.received(), deep)).possibleTroubles())
                .contains("rules 5 and 12 clash");
    }

    @Test
    void knowingNothingLeavesEveryRulePossible() {
        Undecided undecided = (Undecided) MethodChooser.decide(TestTables.corrected(), Map.of());
        assertThat(undecided.possibleRules()).hasSize(16);
        assertThat(undecided.missing()).hasSize(7);
        assertThat(undecided.possibleTroubles()).isEmpty();
    }

    @Test
    void aNoFromTheHolderOfTheLandOutweighsTheSiteList() {
        Site site = ScenarioSites.named("HSK-02");
        assertThat(MethodChooser.decide(
                        TestTables.corrected(),
                        MethodChooser.caseOf(site, List.of(consent("HSK-02", ConsentStatus.YES, false)))))
                .extracting(outcome -> ((Chosen) outcome).rule())
                .isEqualTo(10);
        Site nobodyAsked = ScenarioSites.site("HSK-02", site.conditions(), Optional.empty());
        assertThat(night(nobodyAsked, consent("HSK-02", ConsentStatus.YES, true)))
                .contains(CaseValue.of(true));
        assertThat(night(nobodyAsked, consent("HSK-02", ConsentStatus.PENDING, true)))
                .isEmpty();
        assertThat(night(nobodyAsked, consent("OUN-01", ConsentStatus.YES, true)))
                .isEmpty();
    }

    @Test
    void anInputDeclaredAsAnotherTypeLeavesTheSiteUndecided() {
        DecisionTable table = TestTables.read(dmn(
                        "hitPolicy=\"UNIQUE\"",
                        input("max_depth_m", "string")
                                + methodOutput()
                                + rule("\"deep\"", "TRAP")
                                + rule("not(\"deep\")", "EFISH")))
                .value()
                .orElseThrow();
        List<MethodDecision> decisions = MethodChooser.decide(table, List.of(ScenarioSites.named("BRN-01")), List.of());
        assertThat(decisions)
                .extracting(MethodDecision::outcome)
                .containsExactly(settled("max_depth_m", List.of(1, 2), List.of("TRAP", "EFISH"), List.of()));
    }

    @Test
    void aValueOfTheWrongTypeIsAFaultInTheProgram() {
        assertThatThrownBy(
                        () -> MethodChooser.decide(TestTables.corrected(), Map.of("max_depth_m", CaseValue.of("deep"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("max_depth_m");
    }

    private static Optional<CaseValue> night(Site site, Consent consent) {
        return Optional.ofNullable(MethodChooser.caseOf(site, List.of(consent)).get("night_access"));
    }

    private static Consent consent(String site, ConsentStatus status, boolean nightAccess) {
        return new Consent(
                "C-1",
                site,
                status,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(nightAccess),
                Optional.empty(),
                Optional.empty());
    }

    private static MethodOutcome without(String site, String... inputs) {
        Map<String, CaseValue> values = caseOf(site);
        List.of(inputs).forEach(values::remove);
        return MethodChooser.decide(TestTables.corrected(), values);
    }

    private static MethodOutcome decide(DecisionTable table, String site) {
        return MethodChooser.decide(table, caseOf(site));
    }

    private static Map<String, CaseValue> caseOf(String site) {
        return new LinkedHashMap<>(MethodChooser.caseOf(ScenarioSites.named(site), List.of()));
    }
}
