package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.wadeplan.planner.decon.ReferenceRows.number;
import static org.wadeplan.planner.decon.ReferenceRows.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DilutionReferenceTest {

    static List<Map<String, String>> rows() {
        return ReferenceRows.of("dilution.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void givesThePublishedFigure(Map<String, String> row) {
        assertThat(computed(row)).isCloseTo(number(row, "expected"), within(number(row, "tolerance")));
    }

    private static double computed(Map<String, String> row) {
        double a = number(row, "a");
        double b = number(row, "b");
        return switch (text(row, "formula")) {
            case "waterParts" -> Dilution.waterPartsPerStockPart(a, b);
            case "powderGPerL" -> Dilution.powderGPerL(a, b);
            case "strengthMgL" -> Dilution.strengthMgL(a, b, number(row, "c"));
            case "powderKg" -> Dilution.powderKg(a, b);
            case "productMl" -> Dilution.productMl(a, b);
            case "productFor" -> Dilution.stockMl(a, b * 10_000, number(row, "c"));
            case "availableChlorineMgL" -> Dilution.availableChlorineMgL(a, b);
            case "stockMl" -> Dilution.stockMl(a, b, number(row, "c"));
            default -> throw new IllegalArgumentException(row.toString());
        };
    }

    /** Own arithmetic: two per cent of a product of 2 to 6 % is 400 to 1200 mg/L. */
    @Test
    void twoPercentOfTheProductIsNotTwoPercent() {
        assertThat(Dilution.productPercentCaution(2, Optional.empty()))
                .isEqualTo("2 % of the product is 400 to 1200 mg/L available chlorine as the bottle goes from 2 to 6 %:"
                        + " read the bottle.");
        assertThat(Dilution.productPercentCaution(2, Optional.of(3.0)))
                .isEqualTo(
                        "2 % of the product at 3 % is 600 mg/L available chlorine. The bottle is under 4 %: weaker than"
                                + " the label's rule assumes.");
        assertThat(Dilution.productPercentCaution(3, Optional.of(4.0)))
                .isEqualTo("3 % of the product at 4 % is 1200 mg/L available chlorine.");
    }

    @Test
    void refusesWhatCannotBeMixed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Dilution.waterPartsPerStockPart(1, 2))
                .withMessageContaining("cannot make");
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.powderKg(0, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.stockMl(10, Double.NaN, 5));
    }
}
