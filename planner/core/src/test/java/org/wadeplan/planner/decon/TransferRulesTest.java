package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.wadeplan.planner.decon.Rows.FIRST_DAY;
import static org.wadeplan.planner.decon.Rows.at;
import static org.wadeplan.planner.decon.Rows.hot;
import static org.wadeplan.planner.decon.Rows.oxidiser;
import static org.wadeplan.planner.round.EvidenceGrade.A;
import static org.wadeplan.planner.round.EvidenceGrade.C;
import static org.wadeplan.planner.round.Material.FELT;
import static org.wadeplan.planner.round.Material.HARD;
import static org.wadeplan.planner.round.TreatmentMode.SOAK;
import static org.wadeplan.planner.round.WaterPest.PestStatus.FREE;
import static org.wadeplan.planner.round.WaterPest.PestStatus.KNOWN;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.WaterPest;

class TransferRulesTest {

    private static final KitSet KIT = Rows.kitSet("K", Set.of(HARD));
    private static final List<Treatment> TREATMENTS = List.of(
            hot("hot-60", "P", HARD, 60, 10, A), oxidiser("P", HARD, SOAK, 5, C), oxidiser("Q", HARD, SOAK, 20, A));

    private static TransferRules rules(List<String> protectedWaters, WaterPest... rows) {
        Biosecurity biosecurity = Rows.biosecurity(TREATMENTS, rows);
        return new TransferRules(biosecurity, FIRST_DAY, protectedWaters);
    }

    private static List<String> treatments(Turnaround turnaround) {
        return turnaround.covers().stream()
                .map(cover -> cover.pest() + " by " + cover.treatment())
                .toList();
    }

    @Test
    void coversThePestsOfEveryWaterSinceTheLastClean() {
        TransferRules rules = rules(List.of(), at("U", "P", KNOWN, "2027-01-01"), at("V", "Q", KNOWN, "2027-01-01"));
        Turnaround both = rules.needed(KIT, List.of("V", "U"), "W");
        assertThat(both.fromWater()).isEqualTo("U+V");
        assertThat(treatments(both)).containsExactly("P by hot-60", "Q by oxidiser");
        assertThat(both.crewMin()).isEqualTo(20 + 10 + 30 + 20 + 10 + 10);
    }

    @Test
    void anotherWaterInBetweenMeansAFullCleanBackIntoTheFirst() {
        TransferRules rules = rules(List.of(), at("U", "P", KNOWN, "2027-01-01"));
        assertThat(rules.needed(KIT, List.of("U"), "U").steps())
                .extracting(DeconStep::step)
                .containsExactly("check-rinse");
        assertThat(treatments(rules.needed(KIT, List.of("U", "V"), "U"))).containsExactly("P by hot-60");
    }

    /** Unknown counts as suspected: our own rule for a water with no pest on record. */
    @Test
    void cleansEvenFromAWaterWithoutAnyPestOnRecord() {
        Turnaround turnaround = rules(List.of()).needed(KIT, List.of("U"), "V");
        assertThat(treatments(turnaround)).containsExactly("P by oxidiser", "Q by oxidiser");
        assertThat(turnaround.reason()).contains("unknown counts as suspected").contains("Generic clean");
    }

    @Test
    void isNeverWeakerIntoAProtectedWater() {
        WaterPest[] rows = {at("U", "P", KNOWN, "2027-01-01")};
        Turnaround ordinary = rules(List.of(), rows).needed(KIT, List.of("U"), "V");
        Turnaround intoProtected = rules(List.of("V"), rows).needed(KIT, List.of("U"), "V");
        assertThat(treatments(ordinary)).containsExactly("P by hot-60");
        assertThat(treatments(intoProtected)).containsExactly("P by hot-60", "Q by oxidiser");
        assertThat(intoProtected.reason()).contains("Into a protected water");
    }

    @Test
    void refusesALegThatNothingCoversAndSaysWhy() {
        Biosecurity nothing =
                Rows.biosecurity(List.of(hot("hot-60", "P", HARD, 60, 10, A)), at("U", "P", KNOWN, "2027-01-01"));
        KitSet felt = Rows.kitSet("K", Set.of(FELT));
        Turnaround turnaround = new TransferRules(nothing, FIRST_DAY, List.of()).needed(felt, List.of("U"), "V");
        assertThat(turnaround.possible()).isFalse();
        assertThat(turnaround.uncovered())
                .containsExactly(new Turnaround.Uncovered("P", FELT, "hot-60 (soak): no row for felt items"));
        assertThat(turnaround.reason()).contains("Refused: nothing in the table covers P on felt items");
    }

    @Test
    void tellsThatALookAgedToUnknown() {
        Turnaround turnaround =
                rules(List.of(), at("U", "P", FREE, "2026-01-01")).needed(KIT, List.of("U"), "V");
        assertThat(turnaround.reason()).contains("more than 12 months before the round, so unknown");
    }

    @Test
    void asksForAtLeastOneWater() {
        assertThatIllegalArgumentException().isThrownBy(() -> rules(List.of()).needed(KIT, List.of(), "V"));
    }
}
