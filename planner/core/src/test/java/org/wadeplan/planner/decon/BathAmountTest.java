package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts against published instructions, and the words of targets. */
class BathAmountTest {

    @ParameterizedTest
    @CsvSource({
        // NZ Ministry for Primary Industries, stop clams from spreading: salt 100 g/L, 5 L is 500 g; 5 % bleach, 5 L is
        // 250 mL
        "100, g/L salt, 5, 0.5, kg",
        "5, % v/v product, 5, 0.25, L",
        // Environment Southland, freshwater pest cleaning table: detergent 10 %, 10 L is 1 L
        "10, % v/v product, 10, 1, L",
        // own arithmetic from Stockton & Moffitt 2013: 20 g/L in a 40 L bath is 800 g
        "20, g/L product, 40, 0.8, kg",
        // own arithmetic: an iodophor of 6 mL/L in 60 L
        "6, mL/L product, 60, 0.36, L"
    })
    void isWhatTheInstructionSays(double strength, String basis, double volumeL, double quantity, String unit) {
        BathAmount amount = BathAmount.of(strength, basis, volumeL).orElseThrow();
        assertThat(amount.quantity().orElseThrow()).isEqualTo(quantity);
        assertThat(amount.unit()).isEqualTo(unit);
    }

    /** Own arithmetic, stock for 10 L: 500 mg/L is 125, 100 and 83 mL of a 4, 5 and 6 % bottle. */
    @Test
    void sendsPeopleToTheBottleWhereItsStrengthDecides() {
        assertThat(BathAmount.of(500, "mg/L available chlorine", 10))
                .hasValue(new BathAmount(
                        OptionalDouble.empty(),
                        "",
                        "read the bottle: for 10 L 125 mL of a 4 % one, 100 mL of a 5 % one, 83 mL of a 6 % one (mg/L"
                                + " available chlorine)"));
        assertThat(BathAmount.of(0.4, "% active", 40).orElseThrow().words())
                .isEqualTo(
                        "read the bottle: for 40 L 1600 mL of a 10 % one, 1280 mL of a 12.5 % one, 800 mL of a 20 % one"
                                + " (% active)");
    }

    @Test
    void doesNoArithmeticOnABasisThatItDoesNotKnow() {
        assertThat(BathAmount.of(70, "% v/v", 10)).isEmpty();
        assertThat(BathAmount.of(1, "g/L active", 10)).isEmpty();
    }

    @Test
    void readsATargetBackFromItsWords() {
        assertThat(BathTarget.of("20 g/L product"))
                .isEqualTo(new BathTarget(OptionalDouble.of(20), Optional.of("g/L product"), OptionalDouble.empty()));
        assertThat(BathTarget.of("60 °C"))
                .isEqualTo(new BathTarget(OptionalDouble.empty(), Optional.empty(), OptionalDouble.of(60)));
        assertThat(BathTarget.of("0.4 % active at 20 °C"))
                .isEqualTo(new BathTarget(OptionalDouble.of(0.4), Optional.of("% active"), OptionalDouble.of(20)));
        assertThat(BathTarget.of("-15 °C").hot()).isFalse();
        assertThat(BathTarget.of(""))
                .isEqualTo(new BathTarget(OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty()));
    }
}
