package org.wadeplan.planner.decon.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.TreatmentMode;

/** What the kit touches in the demo's agreed week, and what the ledger says of the same week broken in one place. */
class ExposureLedgerTest {

    private static final String TUESDAY_6 = "2027-09-07T06:00:00Z";

    private static LaneMoment at(Round round, ExposureLedger ledger, String kit, String time) {
        return LaneMoment.of(round, LedgerWeek.lane(ledger, kit), new OpenExposures(round), Instant.parse(time));
    }

    private static List<Problem> errors(Round round) {
        return new LedgerBreaches(round)
                .of(LedgerWeek.ledger(round)).stream()
                        .filter(problem -> problem.severity() == Severity.ERROR)
                        .toList();
    }

    @Test
    void aSetGoesThroughItsStatesInOrder() {
        List<StateSpan> states = LaneStates.of(LedgerWeek.ROUND, LedgerWeek.lane(LedgerWeek.LEDGER, "K2"));

        assertThat(states)
                .extracting(StateSpan::state)
                .containsExactly(
                        KitState.CLEAN_DRY,
                        KitState.IN_USE,
                        KitState.DIRTY,
                        KitState.TREATING,
                        KitState.DRYING,
                        KitState.RELEASED);
        assertThat(states.get(4).until()).contains(Instant.parse("2027-09-09T03:05:00Z"));
    }

    @Test
    void exposureStaysWithTheKitWhicheverCrewCleansIt() {
        assertThat(at(LedgerWeek.ROUND, LedgerWeek.LEDGER, "K3", TUESDAY_6)).satisfies(moment -> {
            assertThat(moment.state()).isEqualTo(KitState.DIRTY);
            assertThat(moment.exposedTo()).containsExactly("HSK");
            assertThat(moment.wetSince()).contains(Instant.parse("2027-09-06T13:05:00Z"));
            assertThat(moment.releasedFor()).isEmpty();
        });
    }

    @Test
    void trapsStayInTheWaterUntilTheyAreLifted() {
        assertThat(at(LedgerWeek.ROUND, LedgerWeek.LEDGER, "T1", TUESDAY_6).state())
                .isEqualTo(KitState.IN_USE);
    }

    @Test
    void aDryingSetIsReleasedWhenItsDryingIsOver() {
        LaneMoment drying = at(LedgerWeek.ROUND, LedgerWeek.LEDGER, "K4", "2027-09-08T07:19:00Z");
        LaneMoment released = at(LedgerWeek.ROUND, LedgerWeek.LEDGER, "K4", "2027-09-08T07:20:00Z");

        assertThat(drying.state()).isEqualTo(KitState.DRYING);
        assertThat(drying.releasedFor()).isEmpty();
        assertThat(released.state()).isEqualTo(KitState.RELEASED);
        assertThat(released.releasedFor()).contains("BRN", "TOL", "PEL");
    }

    /** Into the refuge, pests that are only suspected count by the best evidence there is. */
    @Test
    void theAgreedWeekCarriesNothingOnAKitSet() {
        assertThat(errors(LedgerWeek.ROUND)).isEmpty();
    }

    @Test
    void aSetThatIsNotCleanedIsNamedWhereItGoesNext() {
        assertThat(errors(LedgerWeek.without("K3", "2027-09-08T15:15:00Z")))
                .extracting(Problem::found)
                .anySatisfy(found ->
                        assertThat(found).contains("K3 may bring into PEL at 2027-09-10 17:30", "ANY from HSK"));
    }

    @Test
    void exposureCarriesOverFromLastWeek() {
        assertThat(errors(LedgerWeek.exposedBefore("K4", "PEL")))
                .extracting(Problem::found)
                .anySatisfy(found -> assertThat(found)
                        .contains("K4 may bring into TOL at 2027-09-07 11:05", "LTW from PEL (before the round)"));
    }

    @Test
    void aSetThatGoesOutWhileItDriesIsNamed() {
        Round early =
                LedgerWeek.agreed(task -> task.site().filter("OUN-01"::equals).isPresent()
                        ? new AgreedTask(
                                task.date(),
                                task.crew(),
                                Instant.parse("2027-09-08T04:30:00Z"),
                                task.site(),
                                task.part(),
                                task.kitSets(),
                                task.note())
                        : task);

        assertThat(errors(early)).extracting(Problem::code).contains("kit-state", "kit-carries");
    }

    @Test
    void anItemIsCleanedWithTheSetThatItWasLastUsedWith() {
        Lane net = LedgerWeek.lane(LedgerWeek.LEDGER, "N3");

        assertThat(net.touches()).extracting(Touch::water).contains("BRN", "OUN-U");
        assertThat(net.treated()).first().satisfies(treated -> {
            assertThat(treated.start()).isEqualTo(Instant.parse("2027-09-06T15:50:00Z"));
            assertThat(treated.credits())
                    .allSatisfy(credit -> assertThat(credit.cover().material()).isEqualTo(Material.ABSORBENT));
        });
    }

    @Test
    void anItemThatGoesOutUncleanedWithAnotherSetIsAWarning() {
        assertThat(new LedgerBreaches(LedgerWeek.ROUND).of(LedgerWeek.LEDGER))
                .filteredOn(problem -> problem.severity() == Severity.WARNING)
                .extracting(Problem::found)
                .anySatisfy(found -> assertThat(found)
                        .contains("N1 may bring into TOL at 2027-09-07 11:55 (TOL-01 survey): ANY from HSK"));
    }

    /** The demo's table refuses the spray for the comb snail, so the record is worth nothing, and no plan stands in for it. */
    @Test
    void aRefusedRecordTakesThePlaceOfWhatWasPlanned() {
        Round round = LedgerWeek.recorded(LedgerWeek.record("oxidiser-spray", TreatmentMode.SPRAY, Optional.empty()));
        ExposureLedger ledger = LedgerWeek.ledger(round);

        assertThat(LedgerWeek.lane(ledger, "K1").treated().get(0)).satisfies(treated -> {
            assertThat(treated.onRecord()).isTrue();
            assertThat(treated.refused()).isTrue();
        });
        assertThat(at(round, ledger, "K1", "2027-09-06T17:30:00Z").state()).isEqualTo(KitState.DIRTY);
    }

    @Test
    void anOverrideCreditsNothing() {
        Round round =
                LedgerWeek.recorded(LedgerWeek.record("oxidiser-spray", TreatmentMode.SPRAY, Optional.of("pavel")));

        assertThat(LedgerWeek.lane(LedgerWeek.ledger(round), "K1")
                        .treated()
                        .get(0)
                        .reasons())
                .anySatisfy(reason -> assertThat(reason).contains("let go all the same by pavel", "credits nothing"));
    }

    @Test
    void anAcceptedRecordDriesUntilSomebodyFoundItDry() {
        Round round = LedgerWeek.recorded(LedgerWeek.record("hot-dip-60", TreatmentMode.SOAK, Optional.empty()));
        ExposureLedger ledger = LedgerWeek.ledger(round);

        assertThat(LedgerWeek.lane(ledger, "K1").treated().get(0).reasons()).isEmpty();
        assertThat(at(round, ledger, "K1", "2027-09-06T17:30:00Z").state()).isEqualTo(KitState.DRYING);
        assertThat(at(round, ledger, "K1", "2027-09-07T03:00:00Z").state()).isEqualTo(KitState.RELEASED);
    }
}
