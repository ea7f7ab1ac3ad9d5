package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.decon.Rows.biosecurity;
import static org.wadeplan.planner.decon.Rows.chemical;
import static org.wadeplan.planner.decon.Rows.dry;
import static org.wadeplan.planner.decon.Rows.hot;
import static org.wadeplan.planner.decon.Rows.oxidiser;
import static org.wadeplan.planner.round.EvidenceGrade.A;
import static org.wadeplan.planner.round.EvidenceGrade.B;
import static org.wadeplan.planner.round.EvidenceGrade.C;
import static org.wadeplan.planner.round.EvidenceGrade.X;
import static org.wadeplan.planner.round.Material.ABSORBENT;
import static org.wadeplan.planner.round.Material.FELT;
import static org.wadeplan.planner.round.Material.HARD;
import static org.wadeplan.planner.round.TreatmentMode.SOAK;
import static org.wadeplan.planner.round.TreatmentMode.SPRAY;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

class TreatmentChoiceTest {

    private static TreatmentChoice.Choice choose(
            Set<Material> materials, Set<String> pests, Set<String> bestGradeFor, Treatment... rows) {
        return new TreatmentChoice(biosecurity(List.of(rows)), Rows.FIRST_DAY).choose(materials, pests, bestGradeFor);
    }

    private static List<String> steps(TreatmentChoice.Choice choice) {
        return choice.steps().stream()
                .map(step -> step.step() + " " + step.minutes())
                .toList();
    }

    @Test
    void appliesOneTreatmentOnceWithTheLongestContactAmongItsPairs() {
        TreatmentChoice.Choice choice = choose(
                Set.of(HARD, ABSORBENT),
                Set.of("P"),
                Set.of(),
                hot("hot", "P", HARD, 60, 2, A),
                hot("hot", "P", ABSORBENT, 60, 40, A));
        assertThat(steps(choice)).containsExactly("brush 20", "soak 40", "rinse 30");
        assertThat(choice.covers())
                .containsExactly(
                        new Turnaround.Cover("P", HARD, "hot", A, "source of hot"),
                        new Turnaround.Cover("P", ABSORBENT, "hot", A, "source of hot"));
    }

    @Test
    void neverLetsASprayStandInForASoak() {
        TreatmentChoice.Choice choice = choose(
                Set.of(HARD), Set.of("P"), Set.of(), oxidiser("P", HARD, SPRAY, 5, X), oxidiser("Q", HARD, SOAK, 5, A));
        assertThat(choice.uncovered())
                .containsExactly(new Turnaround.Uncovered(
                        "P", HARD, "oxidiser (spray): tested and not effective (source of oxidiser)"));
        assertThat(choice.covers()).isEmpty();
    }

    @Test
    void aBlockedSprayLeavesTheSoakAlone() {
        TreatmentChoice.Choice choice = choose(
                Set.of(HARD),
                Set.of("P"),
                Set.of(),
                oxidiser("P", HARD, SPRAY, 5, X),
                oxidiser("P", HARD, SOAK, 20, A));
        assertThat(steps(choice)).containsExactly("brush 20", "soak 20", "rinse 10", "hang 10");
    }

    @Test
    void aRowThatFoundNoEffectBlocksEvenWhereAnotherRowSupports() {
        TreatmentChoice.Choice choice = choose(
                Set.of(HARD), Set.of("P"), Set.of(), hot("hot", "P", HARD, 50, 5, B), hot("hot", "P", HARD, 40, 5, X));
        assertThat(choice.uncovered().get(0).why()).contains("tested and not effective");
    }

    /** Northeast ANS Panel 2008: 30 to 40 min soak for felt. */
    @Test
    void feltWithoutItsOwnRowTakesTheAbsorbentRowForAtLeastThirtyMinutesAndSaysSo() {
        TreatmentChoice.Choice choice =
                choose(Set.of(FELT), Set.of("P"), Set.of(), hot("hot", "P", ABSORBENT, 50, 15, A));
        assertThat(steps(choice)).contains("soak 30");
        assertThat(choice.covers().get(0).source()).contains("no felt row").contains("30 min");
    }

    @Test
    void feltTakesThreeTimesTheHardItemTimeWhereThatIsLonger() {
        TreatmentChoice.Choice choice = choose(
                Set.of(FELT),
                Set.of("P"),
                Set.of(),
                hot("hot", "P", HARD, 50, 15, A),
                hot("hot", "P", ABSORBENT, 50, 20, A));
        assertThat(steps(choice)).contains("soak 45");
    }

    @Test
    void feltIsNotCoveredByAHardRowNorByABlockedAbsorbentOne() {
        assertThat(choose(Set.of(FELT), Set.of("P"), Set.of(), hot("hot", "P", HARD, 50, 5, A))
                        .uncovered())
                .hasSize(1);
        assertThat(choose(Set.of(FELT), Set.of("P"), Set.of(), hot("hot", "P", ABSORBENT, 50, 5, X))
                        .uncovered())
                .hasSize(1);
    }

    @Test
    void dryingIsTakenOnlyWhereNoSoakReleasesTheKitSooner() {
        TreatmentChoice.Choice soak =
                choose(Set.of(HARD), Set.of("P"), Set.of(), dry("P", HARD, 48), hot("hot", "P", HARD, 50, 5, C));
        assertThat(steps(soak)).containsExactly("brush 20", "soak 5", "rinse 30");
        TreatmentChoice.Choice dry = choose(Set.of(HARD), Set.of("P"), Set.of(), dry("P", HARD, 48));
        assertThat(steps(dry)).containsExactly("brush 20", "dry 2880");
        assertThat(dry.steps().get(1).crewBusy()).isFalse();
    }

    @Test
    void againstAKnownPestATestedTreatmentGoesBeforeAnAgencysInstruction() {
        Treatment[] rows = {oxidiser("P", HARD, SOAK, 10, C), hot("hot", "P", HARD, 60, 40, A)};
        assertThat(steps(choose(Set.of(HARD), Set.of("P"), Set.of(), rows))).contains("soak 10");
        assertThat(steps(choose(Set.of(HARD), Set.of("P"), Set.of("P"), rows))).contains("soak 40");
    }

    /** Duke University bleach guideline: never mix bleach with vinegar. */
    @Test
    void neverChoosesAgentsThatMustNeverMeet() {
        TreatmentChoice.Choice choice = choose(
                Set.of(HARD),
                Set.of("P", "Q"),
                Set.of(),
                chemical("bleach", "household bleach", "P", HARD, SOAK, 5, A),
                chemical("vinegar", "vinegar", "Q", HARD, SOAK, 5, A));
        assertThat(choice.treatments()).isEmpty();
        assertThat(choice.uncovered()).hasSize(2).allSatisfy(pair -> assertThat(pair.why())
                .contains("must never meet"));
    }

    @Test
    void amongEqualsTakesThePlaceThatHoldsMoreKitSets() {
        TreatmentChoice.Choice choice = choose(
                Set.of(HARD),
                Set.of("P"),
                Set.of(),
                hot("hot", "P", HARD, 50, 10, A),
                oxidiser("P", HARD, SOAK, 20, A));
        assertThat(choice.treatments().get(0).recipe().treatment()).isEqualTo("oxidiser");
    }

    @Test
    void picksFragmentsFirstWhereARowAsksForIt() {
        TreatmentChoice.Choice choice =
                choose(Set.of(HARD), Set.of("P"), Set.of(), Rows.picked(hot("hot", "P", HARD, 50, 15, A)));
        assertThat(steps(choice)).containsExactly("brush 20", "pick 15", "soak 15", "rinse 30");
    }
}
