package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.decon.CleaningSheet.Items;
import org.wadeplan.planner.decon.schedule.AgreedBaths;
import org.wadeplan.planner.decon.schedule.BathPlan;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.ItemDetail;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.DeconTask;

/** Sheets of the agreed week (Ilvermoor scenario, section 4.8). */
class CleaningSheetTest {

    private static final BathPlan PLAN = BathPlan.of(AgreedBaths.ROUND, AgreedBaths.WEEK);

    private static DeconTask task(String kitSet, String start) {
        return AgreedBaths.WEEK.decon().stream()
                .filter(one ->
                        one.kitSet().equals(kitSet) && one.start().toString().equals(start))
                .findFirst()
                .orElseThrow();
    }

    private static CleaningSheet sheet(Round round, String kitSet, String start) {
        return CleaningSheet.of(round, AgreedBaths.WEEK, PLAN, task(kitSet, start));
    }

    @Test
    void asksForASecondPersonAfterAKnownPestAndNamesIt() {
        assertThat(sheet(AgreedBaths.ROUND, "K4", "2027-09-07T17:50:00Z").secondPerson())
                .hasValue("known in TOL: GSA");
        assertThat(sheet(AgreedBaths.ROUND, "K1", "2027-09-06T15:50:00Z").secondPerson())
                .isEmpty();
    }

    @Test
    void listsTheBathOfItsTubAndCountsTheItems() {
        CleaningSheet sheet = sheet(AgreedBaths.ROUND, "T1", "2027-09-07T16:05:00Z");
        assertThat(sheet.baths().stream().map(bath -> bath.place().words()))
                .containsExactly("oxidiser tubs, no. 2 of 2");
        assertThat(sheet.bench()).isPresent();
        assertThat(sheet.items())
                .containsExactly(
                        new Items("12 × small trap", "hard", "up to 65 °C", List.of()),
                        new Items("6 × fyke", "absorbent", "up to 65 °C", List.of()));
    }

    @Test
    void putsItemsWithTheSameLimitsOnOneLine() {
        assertThat(sheet(AgreedBaths.ROUND, "K1", "2027-09-06T15:50:00Z").items().stream()
                        .map(Items::words))
                .containsExactly("3 × boot, 3 × bucket, 11 × stake, 1 × tape", "3 × hand net, 3 × wader");
    }

    /** Gear limits as an agency may write them: a wader that bears 45 °C is barred from a dip of 60 °C, and the sheet says so. */
    @Test
    void namesWhatAnItemDoesNotBear() {
        GearClass wader = new GearClass(
                "wader-45",
                "breathable wader",
                Material.ABSORBENT,
                Immersion.WHOLE,
                OptionalDouble.of(45),
                Set.of("bleach"),
                false,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                "invented, demo only");
        assertThat(sheet(withGear(wader), "K4", "2027-09-07T17:50:00Z").items())
                .contains(new Items(
                        "3 × wader",
                        "absorbent",
                        "up to 45 °C; never bleach; never frozen",
                        List.of("not hot-dip-60 (soak): it bears 45 °C at most, and this is 60 °C")));
    }

    private static Round withGear(GearClass gear) {
        Biosecurity tables = AgreedBaths.ROUND.biosecurity();
        Store store = AgreedBaths.ROUND.store();
        List<StoreItem> items = store.items().stream()
                .map(item -> item.id().equals("K4-WADER") ? of(item, gear.id()) : item)
                .toList();
        return AgreedBaths.ROUND
                .with(new Biosecurity(
                        tables.pests(),
                        tables.waterPests(),
                        tables.treatments(),
                        tables.steps(),
                        tables.resources(),
                        List.of(gear),
                        tables.rules(),
                        tables.jurisdiction()))
                .with(new Store(store.kitSets(), items, store.needs(), store.packSeconds(), store.voltageCeilings()));
    }

    private static StoreItem of(StoreItem item, String gearClass) {
        return new StoreItem(
                item.id(),
                item.kind(),
                item.label(),
                item.quantity(),
                item.unit(),
                item.kitSet(),
                item.material(),
                item.state(),
                item.stateNote(),
                item.availableFrom(),
                item.availableUntil(),
                item.expires(),
                item.healthPct(),
                item.certificates(),
                new ItemDetail(Optional.of(gearClass), OptionalDouble.empty(), List.of(), Optional.empty()));
    }
}
