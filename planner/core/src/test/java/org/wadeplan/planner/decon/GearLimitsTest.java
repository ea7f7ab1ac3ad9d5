package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.decon.Rows.at;
import static org.wadeplan.planner.decon.Rows.chemical;
import static org.wadeplan.planner.decon.Rows.freeze;
import static org.wadeplan.planner.decon.Rows.hot;
import static org.wadeplan.planner.round.EvidenceGrade.A;
import static org.wadeplan.planner.round.Material.ABSORBENT;
import static org.wadeplan.planner.round.Material.HARD;
import static org.wadeplan.planner.round.TreatmentMode.SOAK;
import static org.wadeplan.planner.round.TreatmentMode.WIPE;
import static org.wadeplan.planner.round.WaterPest.PestStatus.KNOWN;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.ItemDetail;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Treatment;

class GearLimitsTest {

    private static final GearClass RUBBER = Rows.gear("rubber", HARD, 65, Set.of());
    private static final GearClass TENDER = Rows.gear("tender", HARD, 50, Set.of("chlorine"));
    private static final GearClass METER = Rows.gear("meter", HARD, 50, Set.of(), Immersion.NONE, false);

    private static StoreItem item(String kind, String kitSet, GearClass gear) {
        return new StoreItem(
                kitSet + kind,
                kind,
                kind,
                1,
                "each",
                Optional.of(kitSet),
                HARD,
                StoreState.CLEAN_DRY,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                new ItemDetail(Optional.of(gear.id()), OptionalDouble.empty(), List.of(), Optional.empty()));
    }

    private static Turnaround needed(List<StoreItem> items, Treatment... rows) {
        Biosecurity plain = Rows.biosecurity(List.of(rows), at("U", "P", KNOWN, "2027-01-01"));
        Biosecurity geared = new Biosecurity(
                plain.pests(),
                plain.waterPests(),
                plain.treatments(),
                plain.steps(),
                plain.resources(),
                List.of(RUBBER, TENDER, METER),
                List.of(),
                Optional.empty());
        KitSet kit = Rows.kitSet("K", Set.of(HARD));
        KitSet other = Rows.kitSet("L", Set.of(HARD));
        Store store = new Store(List.of(kit, other), items, List.of(), List.of(), List.of());
        return new TransferRules(geared, Rows.FIRST_DAY, List.of(), store).needed(kit, List.of("U"), "V");
    }

    @Test
    void aBathHotterThanAnItemBearsIsNotTaken() {
        Turnaround turnaround = needed(
                List.of(item("wader", "K", TENDER)),
                hot("hot", "P", HARD, 60, 5, A),
                hot("warm", "P", HARD, 50, 20, A));
        assertThat(turnaround.covers()).extracting(Turnaround.Cover::treatment).containsExactly("warm");
        assertThat(turnaround.reason())
                .contains("hot (soak) is refused on wader: it bears 50 °C at most, and this is 60 °C.");
    }

    @Test
    void anAgentThatHarmsAndFrostThatHarmsAreRefusedWithTheirReason() {
        Turnaround turnaround = needed(
                List.of(item("wader", "K", TENDER), item("meter", "K", METER)),
                chemical("chlorine", "chlorine", "P", HARD, SOAK, 5, A),
                freeze("P", HARD, 60, A),
                hot("warm", "P", HARD, 40, 20, A),
                chemical("wipe", "alcohol", "P", HARD, WIPE, 1, A));
        assertThat(turnaround.possible()).isTrue();
        assertThat(turnaround.reason())
                .contains("chlorine (soak) is refused on wader: chlorine harms it.")
                .contains("freeze (freeze) is refused on meter: frost harms it.")
                .contains("warm (soak) is refused on meter: it must not be immersed or sprayed: wipe only.");
    }

    @Test
    void theLabelNamesWhatTheBathMustNotBeUsedOn() {
        GearClass net = Rows.gear("net", ABSORBENT, 65, Set.of());
        Biosecurity plain = Rows.biosecurity(
                List.of(hot("hot", "P", ABSORBENT, 60, 5, A), chemical("wipe", "alcohol", "P", HARD, WIPE, 2, A)),
                at("U", "P", KNOWN, "2027-01-01"));
        TreatmentChoice.Choice choice = new TreatmentChoice(plain, Rows.FIRST_DAY)
                .choose(
                        List.of(
                                new ItemKind(HARD, Optional.of(METER), List.of("meter")),
                                new ItemKind(ABSORBENT, Optional.of(net), List.of("net"))),
                        List.of("P"),
                        Demand.NONE);
        assertThat(choice.steps())
                .extracting(DeconStep::label)
                .contains(
                        "soak in hot water, all surfaces wet: 5 min; NOT for: meter",
                        "wipe with alcohol and keep wet: 2 min");
    }

    @Test
    void anItemThatNothingCoversRefusesTheLegAndTheWaysOutWereTried() {
        Turnaround turnaround = needed(
                List.of(item("boot", "K", RUBBER), item("meter", "K", METER), item("boot", "L", RUBBER)),
                hot("hot", "P", HARD, 60, 5, A));
        assertThat(turnaround.uncovered())
                .containsExactly(new Turnaround.Uncovered(
                        "P", HARD, "meter: hot (soak): it must not be immersed or sprayed: wipe only"));
        assertThat(turnaround.covers()).as("the material is not whole").isEmpty();
        assertThat(turnaround.reason())
                .contains("Ways out: use a kit set that can be cleaned for it, L (55 min and 0 h alone);")
                .contains("leave meter behind, and clean the rest (55 min and 0 h alone)");
    }

    /** Nothing covers P on hard items; V has no pest on record, so a kit set that starts there needs the generic clean only. */
    @Test
    void anotherOrderIsNamedWhereItsCleanIsCovered() {
        Turnaround turnaround = needed(
                List.of(item("boot", "K", RUBBER)),
                hot("hot", "P", ABSORBENT, 60, 5, A),
                hot("warm", "Q", HARD, 50, 5, A));
        assertThat(turnaround.possible()).isFalse();
        assertThat(turnaround.reason()).endsWith("Ways out: work V before U, a clean that the table covers.");
    }

    @Test
    void whereNoWayOutDoesItSaysSo() {
        Turnaround turnaround =
                needed(List.of(item("meter", "K", METER), item("meter", "L", METER)), hot("hot", "P", HARD, 60, 5, A));
        assertThat(turnaround.reason()).contains("No way out was found");
    }

    @Test
    void whatAnItemWithoutAGearClassBearsIsSaidToBeUnknown() {
        StoreItem plain = new StoreItem(
                "KX",
                "stake",
                "stake",
                1,
                "each",
                Optional.of("K"),
                HARD,
                StoreState.CLEAN_DRY,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of());
        Turnaround turnaround = needed(List.of(plain), hot("hot", "P", HARD, 60, 5, A));
        assertThat(turnaround.possible()).isTrue();
        assertThat(turnaround.reason()).contains("What these bear is not on record: stake.");
    }
}
