package org.wadeplan.planner.decon.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.kit.ReferenceWeek;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;

/** The agreed week of the Ilvermoor scenario, sections 4.4, 4.8 and trouble 13: five baths of 1.2 kg against 4.0 kg. */
class BathPlanTest {

    private static final BathPlan PLAN = BathPlan.of(AgreedBaths.ROUND, AgreedBaths.WEEK);
    private static final LocalDate MONDAY = LocalDate.of(2027, 9, 6);

    private static List<PlannedBath> oxidiser() {
        return PLAN.baths().stream()
                .filter(bath -> bath.place().resource().equals("oxidiser-tub"))
                .toList();
    }

    @Test
    void fiveBathsTakeSixKilogramsAndTwoAreMissing() {
        assertThat(oxidiser()).hasSize(5);
        BathStock stock = PLAN.stock().get(0);
        assertThat(stock.kind()).isEqualTo("oxidiser");
        assertThat(stock.needed()).isEqualTo(6.0);
        assertThat(stock.inDate()).isEqualTo(4.0);
        assertThat(stock.outOfDate()).isEqualTo(1.0);
        assertThat(stock.shortBy()).isEqualTo(2.0);
        assertThat(stock.days())
                .containsExactly(
                        new BathStock.Day(MONDAY, 1, 1.2, 0),
                        new BathStock.Day(MONDAY.plusDays(1), 2, 2.4, 0),
                        new BathStock.Day(MONDAY.plusDays(2), 1, 1.2, 0.8),
                        new BathStock.Day(MONDAY.plusDays(3), 1, 1.2, 1.2));
    }

    /** Trouble 13: the Brannet is fished again on Tuesday, so Monday's clean could wait: 4.8 kg, still 0.8 short. */
    @Test
    void tellsThatMondaysCleanIsOptionalAndThatItIsNotEnough() {
        BathStock stock = PLAN.stock().get(0);
        assertThat(stock.optional().stream()
                        .map(one -> one.task().kitSet() + " " + one.task().start()))
                .containsExactly("K1 2027-09-06T15:50:00Z");
        assertThat(stock.neededWithout()).isEqualTo(4.8);
        assertThat(stock.shortByWithout()).isEqualTo(0.8);
        assertThat(stock.words(AgreedBaths.ROUND.header().zone()))
                .isEqualTo(
                        "5 baths take 6 kg of oxidiser; 4 kg in date, 1 kg out of date: short 2 kg from Wed 8 Sep on."
                                + " The clean of K1 on Mon is optional: no pest is known in BRN, and the set goes back there first,"
                                + " to BRN-03 on Tue 07:25. Without: 4.8 kg, still short 0.8 kg.");
    }

    /** Two sets of one crew lie in two tubs side by side; the second set of a day shares the bath of the first. */
    @Test
    void putsTwoSetsInTwoTubsAndASecondOneIntoTheSameBath() {
        assertThat(oxidiser().stream()
                        .map(bath ->
                                bath.day().getDayOfMonth() + " " + bath.place().number() + " "
                                        + bath.uses().stream()
                                                .map(use -> use.kitSet() + " " + use.in())
                                                .toList()))
                .containsExactly(
                        "6 1 [K1 2027-09-06T16:10:00Z]",
                        "7 1 [K1 2027-09-07T16:25:00Z]",
                        "7 2 [T1 2027-09-07T16:25:00Z]",
                        "8 1 [K1 2027-09-08T14:35:00Z, K3 2027-09-08T15:35:00Z]",
                        "9 1 [K1 2027-09-09T15:25:00Z]");
        assertThat(oxidiser().get(0).makeUp()).isEqualTo("1.2 kg made up to 60 L");
        assertThat(oxidiser().get(0).discardBy()).isEqualTo(Instant.parse("2027-09-07T00:00:00Z"));
    }

    @Test
    void startsAHotBathAsHotAsItMustAndAsksForNoPowder() {
        PlannedBath dip = PLAN.baths().stream()
                .filter(bath -> bath.place().resource().equals("hot-bay"))
                .findFirst()
                .orElseThrow();
        assertThat(dip.target()).isEqualTo("60 °C");
        assertThat(dip.amount()).isEmpty();
        assertThat(dip.makeUp()).isEqualTo("start at 68 °C lidded, 77 °C open");
    }

    /** Default of our own: stock that the store calls opened more than six months before counts for four fifths. */
    @Test
    void countsOldStockForFourFifths() {
        assertThat(stockWith("opened 2027-02-15").oldCountsFor()).isEqualTo(0.8);
        assertThat(stockWith("opened 2027-02-15").inDate()).isEqualTo(3.2);
        assertThat(stockWith("opened 2027-02-15").shortBy()).isEqualTo(2.8);
        assertThat(stockWith("opened 2027-04").inDate()).isEqualTo(4.0);
        assertThat(stockWith("opened 2027-13").inDate()).isEqualTo(4.0);
    }

    private static BathStock stockWith(String note) {
        Store store = AgreedBaths.ROUND.store();
        List<StoreItem> items = store.items().stream()
                .map(item -> item.id().equals("C1") ? noted(item, note) : item)
                .toList();
        Round round = AgreedBaths.ROUND.with(
                new Store(store.kitSets(), items, store.needs(), store.packSeconds(), store.voltageCeilings()));
        return BathPlan.of(round, AgreedBaths.WEEK).stock().get(0);
    }

    private static StoreItem noted(StoreItem item, String note) {
        return new StoreItem(
                item.id(),
                item.kind(),
                item.label(),
                item.quantity(),
                item.unit(),
                item.kitSet(),
                item.material(),
                item.state(),
                Optional.of(note),
                item.availableFrom(),
                item.availableUntil(),
                item.expires(),
                item.healthPct(),
                item.certificates(),
                item.detail());
    }

    /** Scenario 4.8, Thursday: K5 and T2 come back from the Pell together, and there is one hot bay. */
    @Test
    void tellsWhatASecondHotBayWouldBring() {
        BenchPlan bench = BenchPlan.of(AgreedBaths.ROUND, AgreedBaths.WEEK);
        assertThat(bench.gains().stream()
                        .filter(gain -> gain.place().isPresent())
                        .map(BenchGain::words))
                .containsExactly(
                        "with one more of: hot-dip bay, T2 is released 90 min earlier (75 of them by beginning as"
                                + " soon as set and crew are back)");
    }

    /** In the scenario's own hours both sets start at 08:55: the one bay makes T2 wait for the 15 minutes of one dip. */
    @Test
    void makesTheSecondSetWaitForTheOneBay() {
        BenchPlan bench = BenchPlan.of(AgreedBaths.ROUND, ReferenceWeek.of(AgreedBaths.ROUND));
        BenchTask waiting = bench.tasks().stream()
                .filter(task -> task.kitSet().equals("T2"))
                .findFirst()
                .orElseThrow();
        assertThat(waiting.waitedMin()).isEqualTo(15);
        assertThat(bench.later().stream().map(late -> late.task().kitSet() + " " + late.minutesLater()))
                .containsExactly("T2 15");
        Round roomier = AgreedBaths.ROUND.with(TwoBays.of(AgreedBaths.ROUND.biosecurity()));
        assertThat(BenchPlan.of(roomier, ReferenceWeek.of(AgreedBaths.ROUND)).later())
                .isEmpty();
    }

    @Test
    void aCleanOfOneSetShowsItsOwnBathsAndTheStockOfTheWeek() {
        BathPlan only = PLAN.only("T1");
        assertThat(only.bench().tasks().stream().map(BenchTask::kitSet)).containsExactly("T1");
        assertThat(only.baths()).hasSize(1);
        assertThat(only.stock()).isEqualTo(PLAN.stock());
    }
}
