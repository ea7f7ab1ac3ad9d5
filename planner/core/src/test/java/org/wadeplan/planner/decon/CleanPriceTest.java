package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.decon.Rows.hot;
import static org.wadeplan.planner.round.EvidenceGrade.A;
import static org.wadeplan.planner.round.Material.HARD;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** Time goes first, then product, then wear. */
class CleanPriceTest {

    private static Treatment chemical(String id, double strength, String basis, TreatmentMode mode, int contactMin) {
        return new Treatment(
                id,
                "P",
                HARD,
                "agent of " + id,
                OptionalDouble.of(strength),
                Optional.of(basis),
                OptionalDouble.empty(),
                mode,
                contactMin,
                0,
                false,
                A,
                "source of " + id);
    }

    private static List<String> chosen(Treatment... rows) {
        return new TreatmentChoice(Rows.biosecurity(List.of(rows)), Rows.FIRST_DAY)
                .choose(Set.of(HARD), Set.of("P")).treatments().stream()
                        .map(treatment -> treatment.recipe().treatment())
                        .toList();
    }

    /** 40 L for a soak and 2 L for a spray where the round names no tub, own estimates; 60 L of the round's own tub. */
    @ParameterizedTest
    @CsvSource({
        "20, g/L product, SOAK, 800",
        "500, mg/L available chlorine, SOAK, 20",
        "2, % v/v product, SOAK, 800",
        "20, g/L product, SPRAY, 40",
        "6, mL/L product, SOAK, 240",
        "3, spoons, SOAK, 1200",
    })
    void countsTheProductOfOneBath(double strength, String basis, TreatmentMode mode, double grams) {
        CleanPrice price = new CleanPrice(Rows.biosecurity(List.of()));
        assertThat(price.productG(Recipe.of(chemical("x", strength, basis, mode, 5))))
                .isEqualTo(grams);
        assertThat(price.productG(Recipe.of(hot("hot", "P", HARD, 60, 5, A)))).isZero();
        assertThat(price.productG(Recipe.of(Rows.oxidiser("P", HARD, TreatmentMode.SOAK, 5, A))))
                .isEqualTo(20 * 60);
    }

    @Test
    void ofEquallyQuickCleansTheOneWithLessProductIsTaken() {
        assertThat(chosen(
                        chemical("a-strong", 20, "g/L product", TreatmentMode.SOAK, 10),
                        chemical("b-weak", 10, "g/L product", TreatmentMode.SOAK, 10)))
                .containsExactly("b-weak");
        assertThat(chosen(
                        chemical("a-strong", 20, "g/L product", TreatmentMode.SOAK, 9),
                        chemical("b-weak", 10, "g/L product", TreatmentMode.SOAK, 10)))
                .as("time goes first")
                .containsExactly("a-strong");
    }

    @Test
    void wearComesLast() {
        CleanCost less = new CleanCost(60, 60, 1, 2, 100, 10);
        assertThat(less).isLessThan(new CleanCost(60, 60, 1, 2, 100, 20));
        assertThat(less).isLessThan(new CleanCost(60, 60, 1, 2, 101, 5));
        assertThat(less).isGreaterThan(new CleanCost(60, 60, 1, 3, 900, 90));
        assertThat(less).isGreaterThan(new CleanCost(59, 59, 1, 2, 900, 90));
    }
}
