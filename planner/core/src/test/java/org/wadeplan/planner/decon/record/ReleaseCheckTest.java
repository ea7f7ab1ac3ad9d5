package org.wadeplan.planner.decon.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.decon.record.ReleaseAnswer.Verdict;
import org.wadeplan.planner.decon.schedule.AgreedBaths;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** Legs of the agreed Ilvermoor week (section 4.8) with and without sheets for them. */
class ReleaseCheckTest {

    private static final BathRecord FRESH = Records.bath("2027-09-06T15:40:00Z");

    private static ReleaseAnswer ask(Round round, String kitSet, String water, String at) {
        return ReleaseCheck.of(round, AgreedBaths.WEEK).answer(kitSet, water, Instant.parse(at));
    }

    private static ReleaseAnswer ask(String kitSet, String water, String at, Records... records) {
        return ask(Records.round(FRESH, records), kitSet, water, at);
    }

    /** K4 after the Tollow: 60 °C for 40 min, found dry at 07:20 the next morning. */
    private static Records dipped() {
        return Records.dip("K4", "hot-dip-60", 60, "2027-09-07T18:10:00Z", 40).dry("2027-09-08T07:20:00Z");
    }

    @Test
    void aSetThatTouchedNothingMayLeave() {
        ReleaseAnswer answer = ask("K2", "HSK", "2027-09-06T07:00:00Z");
        assertThat(answer.verdict()).isEqualTo(Verdict.CLEARED);
        assertThat(answer.held()).isEmpty();
        assertThat(answer.missing()).isEmpty();
        assertThat(answer.earliest()).hasValue(Instant.parse("2027-09-06T07:00:00Z"));
    }

    @Test
    void withoutARecordASetIsHeldAndEachWayOutWasTried() {
        ReleaseAnswer answer = ask("K4", "PEL", "2027-09-08T08:00:00Z");
        assertThat(answer.verdict()).isEqualTo(Verdict.HELD);
        assertThat(answer.missing())
                .contains(
                        "no accepted cleaning since Tue 7 Sep 17:05 covers GSA on absorbent items from TOL by evidence of"
                                + " grade A or better");
        assertThat(answer.waysOut())
                .containsExactly(
                        "clean it now: brush 20 min, soak 40 min (60 °C), rinse 30 min, dry 720 min; people free at Wed 8"
                                + " Sep 09:30, released at Wed 8 Sep 21:30 if it is recorded, dry to the touch and checked",
                        "use it only in TOL until it is clean");
        assertThat(answer.earliest()).hasValue(Instant.parse("2027-09-08T21:30:00Z"));
    }

    @Test
    void anAcceptedSheetThatWasFoundDryClearsIt() {
        ReleaseAnswer answer = ask("K4", "PEL", "2027-09-08T07:30:00Z", dipped());
        assertThat(answer.missing()).isEmpty();
        assertThat(answer.verdict()).isEqualTo(Verdict.CLEARED);
        assertThat(answer.cleared())
                .allSatisfy(one -> assertThat(one.cleaning()).isEqualTo("C1"));
        assertThat(answer.held()).allSatisfy(held -> assertThat(held.open()).isEmpty());
    }

    @Test
    void aSheetThatNobodySignedDryDoesNot() {
        Records wet = Records.dip("K4", "hot-dip-60", 60, "2027-09-07T18:10:00Z", 40);
        assertThat(ask("K4", "PEL", "2027-09-08T07:30:00Z", wet).missing())
                .containsExactly("nobody found it dry to the touch inside and out after cleaning C1");
        ReleaseAnswer early = ask("K4", "PEL", "2027-09-08T07:00:00Z", dipped());
        assertThat(early.missing()).containsExactly("it was found dry to the touch only at Wed 8 Sep 07:20");
        assertThat(early.earliest()).hasValue(Instant.parse("2027-09-08T07:20:00Z"));
        assertThat(early.waysOut()).contains("wait until Wed 8 Sep 07:20");
    }

    @Test
    void backIntoTheSameWaterNothingIsCarriedToAnother() {
        ReleaseAnswer answer = ask("K1", "BRN", "2027-09-07T07:00:00Z");
        assertThat(answer.verdict()).isEqualTo(Verdict.CLEARED);
        assertThat(answer.held()).isNotEmpty();
    }

    /** By agency instruction alone (grade C) nothing goes into a protected water where tested rows exist. */
    @Test
    void intoAProtectedWaterTheBestEvidenceAndASecondPersonAreAskedFor() {
        Records unchecked = dipped().checkedBy("beatriz");
        assertThat(ask("K4", "HSK", "2027-09-08T09:00:00Z", unchecked).missing())
                .isEmpty();
        Records monday = Records.soak("K1", "2027-09-06T16:10:00Z", 20)
                .dry("2027-09-07T04:50:00Z")
                .checkedBy("");
        assertThat(ask("K1", "HSK", "2027-09-07T06:00:00Z", monday).missing())
                .containsExactly(
                        "cleaning C1 has no checker beside its operator, and this leg asks for a second person");
    }

    @Test
    void aRefusedSheetIsNamedWithItsReasons() {
        ReleaseAnswer answer = ask("K4", "PEL", "2027-09-08T08:00:00Z", dipped().temps(66, 58));
        assertThat(answer.verdict()).isEqualTo(Verdict.HELD);
        assertThat(answer.refused())
                .containsExactly(
                        "C1 (hot-dip-60, soak, Tue 7 Sep 18:10): the temperature at the end was 58 °C, and 60 °C"
                                + " must hold to the end");
    }

    @Test
    void anOverrideIsNeverClean() {
        ReleaseAnswer answer = ask(
                "K4", "PEL", "2027-09-08T08:00:00Z", dipped().temps(66, 58).letGo("pavel", "tide waits for nobody"));
        assertThat(answer.verdict()).isEqualTo(Verdict.LET_GO);
        assertThat(answer.mayLeave()).isFalse();
        assertThat(answer.missing()).isNotEmpty();
        assertThat(answer.letGo())
                .containsExactly(
                        "let go by pavel although cleaning C1 does not clear it: tide waits for nobody. It is not"
                                + " clean.");
    }

    /** The override of an earlier use says nothing of the water touched since. */
    @Test
    void anOverrideEndsWithTheNextUse() {
        Records monday = Records.soak("K1", "2027-09-06T16:10:00Z", 5).letGo("pavel", "no powder left");
        assertThat(ask("K1", "OUN-U", "2027-09-07T06:00:00Z", monday).verdict()).isEqualTo(Verdict.LET_GO);
        assertThat(ask("K1", "OUN-U", "2027-09-08T07:00:00Z", monday).verdict()).isEqualTo(Verdict.HELD);
    }

    @Test
    void theCleaningOfOneSetClearsNoOther() {
        assertThat(ask("K4", "PEL", "2027-09-08T08:00:00Z", dipped()).mayLeave())
                .isTrue();
        Records ofAnother =
                Records.dip("K2", "hot-dip-60", 60, "2027-09-07T18:10:00Z", 40).dry("2027-09-08T07:20:00Z");
        assertThat(ask("K4", "PEL", "2027-09-08T08:00:00Z", ofAnother).mayLeave())
                .isFalse();
    }

    @Test
    void aSetInTheWaterOrOutOfServiceStays() {
        assertThat(ask("K4", "PEL", "2027-09-07T13:00:00Z").missing())
                .contains("it is in TOL (TOL-01) until Tue 7 Sep 17:05 by the week in force");
        Round dirty = withSet(new KitSet(
                "K2",
                KitPurpose.WADING,
                Set.of(Material.HARD),
                StoreState.DIRTY,
                List.of(),
                Optional.empty(),
                Optional.empty()));
        assertThat(ask(dirty, "K2", "BRN", "2027-09-06T07:00:00Z").missing())
                .containsExactly(
                        "K2 began the round as dirty, and where it has been is not on file: nothing can be cleared"
                                + " before somebody writes that down");
    }

    private static Round withSet(KitSet changed) {
        Store store = AgreedBaths.ROUND.store();
        List<KitSet> sets = store.kitSets().stream()
                .map(set -> set.id().equals(changed.id()) ? changed : set)
                .toList();
        return AgreedBaths.ROUND.with(new Store(
                sets,
                store.items().stream()
                        .filter(item ->
                                item.kitSet().filter(changed.id()::equals).isEmpty()
                                        || changed.materials().contains(item.material()))
                        .toList(),
                store.needs(),
                store.packSeconds(),
                store.voltageCeilings()));
    }

    /** Without any row for felt and absorbent items against the alga: K3 can never be cleared, a hard set could be. */
    @Test
    void wherePairsHaveNoRowItSaysSoAndNamesASetThatRowsDoCover() {
        Biosecurity tables = AgreedBaths.ROUND.biosecurity();
        List<Treatment> hardOnly = tables.treatments().stream()
                .filter(row -> !row.pest().equals("GSA") || row.material() == Material.HARD)
                .toList();
        Round poorer = withSet(new KitSet(
                        "K2",
                        KitPurpose.WADING,
                        Set.of(Material.HARD),
                        StoreState.CLEAN_DRY,
                        List.of(),
                        Optional.empty(),
                        Optional.empty()))
                .with(new Biosecurity(
                        tables.pests(), tables.waterPests(), hardOnly, tables.steps(), tables.resources()));
        ReleaseAnswer answer = ask(poorer, "K4", "PEL", "2027-09-08T06:00:00Z");
        assertThat(answer.missing().get(0))
                .startsWith("no treatment of the table covers GSA on absorbent items, which it may hold from TOL: ");
        assertThat(answer.earliest()).isEmpty();
        assertThat(answer.waysOut())
                .containsExactly(
                        "take K2 instead: by the records nothing stands against it at Wed 8 Sep 06:00",
                        "next time use K2 in TOL: the table has a row for every pest on every material of it",
                        "use it only in TOL until it is clean");
    }

    @Test
    void sprayForTheSnailNeverReleases() {
        Records spray = Records.soak("K1", "2027-09-10T16:00:00Z", 20)
                .as(TreatmentMode.SPRAY)
                .dry("2027-09-11T04:40:00Z");
        ReleaseAnswer answer = ask("K1", "PEL", "2027-09-11T08:00:00Z", spray);
        assertThat(answer.mayLeave()).isFalse();
        assertThat(answer.refused().get(0)).contains("row oxidiser-spray, grade X");
    }
}
