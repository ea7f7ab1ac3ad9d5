package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChemicalCautionsTest {

    private final ChemicalCautions cautions = ChemicalCautions.shipped();

    @Test
    void everyRowSaysWhereItIsFrom() {
        assertThat(cautions.rows()).hasSizeGreaterThan(10).allSatisfy(row -> assertThat(row.source())
                .isNotBlank());
    }

    /** Duke University bleach guideline; NJ poison centre; MSF cholera guide: never with acid, ammonia, detergent. */
    @ParameterizedTest
    @CsvSource({
        "household bleach, vinegar",
        "household bleach, peroxymonosulfate",
        "sodium hypochlorite, ammonia",
        "chlorine, quaternary ammonium",
        "oxidiser, household bleach",
        "household bleach, dishwashing detergent",
        // from memory: acids and oxidisers that drive gas out of bleach
        "household bleach, peracetic acid",
        "sodium hypochlorite, hydrogen peroxide",
        "household bleach, iodophor"
    })
    void keepsAgentsApartEitherWayRound(String agent, String other) {
        assertThat(cautions.mustNeverMeet(agent, other)).isPresent();
        assertThat(cautions.mustNeverMeet(other, agent)).isEqualTo(cautions.mustNeverMeet(agent, other));
    }

    /** The powder's own sheet says what it must not meet, though the row was written about bleach. */
    @Test
    void tellsWhatMustNeverMeetFromEitherSide() {
        assertThat(cautions.about(List.of("oxidiser")).stream().map(ChemicalCaution::id))
                .contains("bleach-acid");
        assertThat(cautions.about(List.of("vinegar")).stream().map(ChemicalCaution::id))
                .contains("bleach-acid", "peroxide-burns");
    }

    @ParameterizedTest
    @CsvSource({
        "household bleach, goggles-gloves",
        "household bleach, dispose-bleach",
        "household bleach, chlorine-gas",
        "peroxymonosulfate, goggles-gloves",
        "quaternary ammonium, qac-mud",
        "dishwashing detergent, dispose-detergent",
        "ethanol, alcohol-fire",
        "steam, steam-burns",
        "peracetic acid, peroxide-burns",
        "hot water, scald"
    })
    void hasAWordAboutEachAgentInUse(String agent, String caution) {
        assertThat(cautions.about(List.of(agent)).stream().map(ChemicalCaution::id))
                .contains(caution);
    }

    @Test
    void letsHotWaterMeetAnything() {
        assertThat(cautions.mustNeverMeet("hot water", "household bleach")).isEmpty();
        assertThat(cautions.mustNeverMeet("oxidiser", "oxidiser")).isEmpty();
    }

    @Test
    void alwaysTellsWhereToTipAndThatNothingIsCleared() {
        assertThat(cautions.about(List.of("hot water")).stream().map(ChemicalCaution::id))
                .containsExactly("scald", "dispose-land", "battery-out", "not-clearance");
    }
}
