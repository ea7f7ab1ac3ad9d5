package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.kit.StockLine.StockDay;

/**
 * The exact shortages of the Ilvermoor scenario (sections 4.6, 4.8 and 4.9; journey J4 of the job) in the week as its leaders
 * agreed it. The scenario is invented; its figures were worked out by hand.
 */
class AgreedShortagesTest {

    private static final KitPlan KIT = AgreedWeekKit.PLAN.kit();

    @Test
    void listsWhatIsShortAndNothingElse() {
        assertThat(ShortageSummary.of(KIT))
                .extracting(one -> KitWords.kind(one.kind()) + " " + KitWords.days(one.days()) + ": "
                        + KitWords.quantity(one.available(), one.unit()) + " of "
                        + KitWords.quantity(one.needed(), one.unit()) + ", short by "
                        + KitWords.quantity(one.shortBy(), one.unit()))
                .containsExactly(
                        "conductivity meter Mon, Tue, Wed, Thu, Fri: 1 of 2, short by 1",
                        "densiometer Mon, Tue, Wed: 1 of 2, short by 1",
                        "spotlight Mon, Fri: 1 of 2, short by 1",
                        "backpack unit Wed: 1 of 2, short by 1",
                        "fyke Wed: 5 of 6, short by 1",
                        "oxidiser Wed, Thu: 4 kg of 6 kg, short by 2 kg",
                        "anaesthetic Thu, Fri: 90 mL of 110 mL, short by 20 mL");
    }

    /** Trouble 17 of the scenario: V2's inspection is last valid on Thursday. */
    @Test
    void keepsTheVehicleApart() {
        assertThat(KIT.vehicles())
                .extracting(one -> one.date() + " " + String.join("+", one.crews()) + " " + one.reason())
                .containsExactly("2027-09-10 B V2: inspection was last valid on 2027-09-09");
        assertThat(KIT.anythingShort()).isTrue();
    }

    /** Scenario 4.6: N2's frame is cracked, so two nets are left and both crews fish on these days. */
    @Test
    void notesThatNoPoleNetIsSpare() {
        assertThat(KIT.spares())
                .contains(new SpareNote(
                        "pole-net", List.of(day(6), day(7), day(8)), 2, "N2 is out of service (frame cracked)"));
    }

    /** Five baths of 60 L at 20 g/L, 1.2 kg each (scenario 4.4): Mon K1, Tue K1 and T1, Wed K1 then K3, Thu K1. */
    @Test
    void burnsTheOxidiserDown() {
        StockLine oxidiser = stock("oxidiser");
        assertThat(oxidiser.days())
                .usingRecursiveFieldByFieldElementComparator(
                        org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration.builder()
                                .withComparatorForType(AgreedShortagesTest::nearly, Double.class)
                                .build())
                .containsExactly(
                        new StockDay(day(6), 1.2, 1.2, 2.8),
                        new StockDay(day(7), 2.4, 2.4, 0.4),
                        new StockDay(day(8), 1.2, 0.4, 0),
                        new StockDay(day(9), 1.2, 0, 0));
        assertThat(oxidiser.notCounted()).containsExactly("1 kg of C1-OLD expired after 2027-08-31");
        assertThat(oxidiser.expires()).hasValue(LocalDate.of(2028, 6, 30));
    }

    /** Eight surveys of 13 mL and two lifts of 3 mL are 110 mL (scenario 4.6). */
    @Test
    void countsTheAnaestheticOfTheWholeWeek() {
        assertThat(stock("anaesthetic").asked()).isEqualTo(110);
        assertThat(stock("anaesthetic").start()).isEqualTo(90);
    }

    /** Gloves are for people who may work with a live circuit: Oskar may not, so five pairs serve (scenario 4.5, 4.6). */
    @Test
    void givesNoGlovesToWhomTheCircuitIsBarred() {
        LoadLine gloves = KIT.loads().stream()
                .filter(load -> load.crew().equals("A") && load.date().equals(day(6)))
                .flatMap(load -> load.lines().stream())
                .filter(line -> line.kind().equals("insulating-gloves"))
                .findFirst()
                .orElseThrow();
        assertThat(gloves.quantity()).isEqualTo(2);
    }

    private static StockLine stock(String kind) {
        return KIT.stock().stream()
                .filter(line -> line.kind().equals(kind))
                .findFirst()
                .orElseThrow();
    }

    private static int nearly(Double a, Double b) {
        return Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b);
    }

    private static LocalDate day(int ofSeptember) {
        return LocalDate.of(2027, 9, ofSeptember);
    }
}
