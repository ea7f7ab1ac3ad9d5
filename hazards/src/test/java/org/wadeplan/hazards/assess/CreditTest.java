package org.wadeplan.hazards.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.hazards.register.Control;
import org.wadeplan.hazards.register.ControlLevel;

class CreditTest {

    private static final RiskScore WORST = new RiskScore(5, 5);

    @ParameterizedTest
    @CsvSource({"SUBSTITUTE, 3", "ENGINEER, 3", "ADMINISTER, 4", "PPE, 4"})
    void eachLevelEarnsAtMostItsSteps(ControlLevel level, int likelihood) {
        List<Control> three = List.of(control(level), control(level), control(level));
        assertThat(Credit.residual(WORST, three, Set.of(level))).isEqualTo(new RiskScore(likelihood, 5));
    }

    @Test
    void nothingInPlaceEarnsNothing() {
        assertThat(Credit.residual(WORST, oneOfEach(), Set.of())).isEqualTo(WORST);
    }

    @Test
    void aLevelThatTheHazardHasNoControlForEarnsNothing() {
        assertThat(Credit.residual(WORST, List.of(control(ControlLevel.PPE)), EnumSet.allOf(ControlLevel.class)))
                .isEqualTo(new RiskScore(4, 5));
    }

    @Test
    void controlsMakeHarmRarerButNeverSmallerAndNeverLessThanRare() {
        assertThat(Credit.residual(new RiskScore(2, 5), oneOfEach(), EnumSet.allOf(ControlLevel.class)))
                .isEqualTo(new RiskScore(1, 5));
    }

    @Test
    void doingEverythingOnTheDayCountsNeitherEliminatingNorSubstituting() {
        assertThat(Credit.ifDone(WORST, oneOfEach())).isEqualTo(new RiskScore(1, 5));
        assertThat(Credit.ifDone(WORST, List.of(control(ControlLevel.ELIMINATE), control(ControlLevel.SUBSTITUTE))))
                .isEqualTo(WORST);
    }

    @Test
    void rulesAndWornGearAloneLeanOnPeople() {
        assertThat(Credit.leansOnPeople(oneOfEach(), EnumSet.of(ControlLevel.ADMINISTER, ControlLevel.PPE)))
                .isTrue();
        assertThat(Credit.leansOnPeople(oneOfEach(), EnumSet.of(ControlLevel.ENGINEER)))
                .isFalse();
    }

    private static List<Control> oneOfEach() {
        return Stream.of(ControlLevel.values()).map(CreditTest::control).toList();
    }

    private static Control control(ControlLevel level) {
        return new Control(level, "leader", "Do it.");
    }
}
