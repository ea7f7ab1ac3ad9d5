package org.wadeplan.planner.decon.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.decon.AppliedTreatment;
import org.wadeplan.planner.decon.LooseGear;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** Items outside the kit sets when the set that they were used with is cleaned, in the demo's agreed week (invented). */
class LooseGearTest {

    /** K4 after the Tollow: the hot dip at 60 °C against the alga. */
    private static final List<Turnaround.Cover> AFTER_THE_TOLLOW =
            LedgerWeek.lane(LedgerWeek.LEDGER, "K4").treated().get(0).credits().stream()
                    .map(Treated.Credit::cover)
                    .toList();

    private static LooseGear.Care care(Round round, String item) {
        StoreItem stored = round.store().items().stream()
                .filter(one -> one.id().equals(item))
                .findFirst()
                .orElseThrow();
        return new LooseGear(round).with(stored, AFTER_THE_TOLLOW);
    }

    private static Round withoutWipes() {
        Biosecurity all = LedgerWeek.ROUND.biosecurity();
        List<Treatment> soaks = all.treatments().stream()
                .filter(row -> row.mode() != TreatmentMode.WIPE)
                .toList();
        return LedgerWeek.ROUND.with(new Biosecurity(
                all.pests(),
                all.waterPests(),
                soaks,
                all.steps(),
                all.resources(),
                all.gear(),
                all.rules(),
                all.jurisdiction()));
    }

    @Test
    void glovesGoIntoTheBathWithTheSet() {
        assertThat(care(LedgerWeek.ROUND, "G1"))
                .isInstanceOfSatisfying(LooseGear.Care.SoakedAlong.class, along -> assertThat(along.covers())
                        .extracting(Turnaround.Cover::pest)
                        .contains("GSA", "ANY"));
    }

    @Test
    void aBackpackUnitIsWipedAgainstEveryPestThatTheSetIsCleanedOf() {
        assertThat(care(LedgerWeek.ROUND, "E1")).isInstanceOfSatisfying(LooseGear.Care.Wiped.class, wiped -> {
            assertThat(wiped.treatments())
                    .extracting(AppliedTreatment::contactMin)
                    .containsExactly(10.0);
            assertThat(wiped.covers()).extracting(Turnaround.Cover::pest).containsExactly("ANY", "GSA");
        });
    }

    @Test
    void withoutARowThatSaysWipeNothingIsCredited() {
        assertThat(care(withoutWipes(), "E1"))
                .isInstanceOfSatisfying(LooseGear.Care.NotCovered.class, none -> assertThat(none.why())
                        .anySatisfy(why -> assertThat(why)
                                .contains("GSA")
                                .contains("hot-dip-60")
                                .contains("must not be immersed")));
    }

    @Test
    void aUnitThatWasOnlyWipedOnPaperStaysWithItsWater() {
        Instant wednesday = Instant.parse("2027-09-08T06:00:00Z");
        Round without = withoutWipes();
        ExposureLedger ledger = LedgerWeek.ledger(without);

        assertThat(new OpenExposures(LedgerWeek.ROUND).releasedFor(LedgerWeek.lane(LedgerWeek.LEDGER, "E1"), wednesday))
                .contains("OUN-U", "PEL");
        assertThat(new OpenExposures(without).releasedFor(LedgerWeek.lane(ledger, "E1"), wednesday))
                .isEmpty();
    }
}
