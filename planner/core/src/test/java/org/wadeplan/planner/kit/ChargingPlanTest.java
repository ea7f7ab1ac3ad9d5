package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;

/** Four places, 3.5 h a charge (Ilvermoor scenario, section 4.6). */
class ChargingPlanTest {

    private static final List<PackCharge> CHARGES = charges(AgreedWeekKit.ROUND);

    private static List<PackCharge> charges(Round round) {
        return ChargingPlan.of(round, AgreedWeekKit.PLAN.week().crewDays(), AgreedWeekKit.PLAN.kit());
    }

    @Test
    void chargesThreeAndAHalfHours() {
        assertThat(CHARGES).isNotEmpty().allSatisfy(charge -> assertThat(charge.until())
                .hasValue(charge.from().plus(Duration.ofMinutes(210))));
    }

    @Test
    void putsOnePackOnAPlaceAtATime() {
        for (PackCharge one : CHARGES) {
            for (PackCharge other : CHARGES) {
                boolean same = one.place().equals(other.place()) || one.pack().equals(other.pack());
                boolean meet = one.from().isBefore(other.until().orElseThrow())
                        && other.from().isBefore(one.until().orElseThrow());
                assertThat(one.equals(other) || !(same && meet))
                        .as(one + " and " + other)
                        .isTrue();
            }
        }
    }

    @Test
    void fillsEveryPackBeforeItIsLoadedAgain() {
        assertThat(CHARGES).noneMatch(PackCharge::late);
    }

    /** One place for two packs: the second waits 3.5 h, and somebody has to be there. */
    @Test
    void saysWhenSomebodyMustChangePacks() {
        List<PackCharge> one = charges(withPlaces(1));
        assertThat(one.get(0).change()).isFalse();
        assertThat(one.get(1).from()).isEqualTo(one.get(0).until().orElseThrow());
        assertThat(one.get(1).change()).isTrue();
    }

    @Test
    void isSilentWithoutACharger() {
        assertThat(charges(withPlaces(0))).isEmpty();
    }

    @Test
    void callsAPackLateThatIsNotFullInTime() {
        Instant on = Instant.parse("2027-09-07T02:00:00Z");
        PackCharge charge = new PackCharge(
                java.time.LocalDate.of(2027, 9, 6),
                "P1",
                "CH1 no. 1",
                on,
                Optional.of(on.plus(Duration.ofMinutes(210))),
                Optional.of(on.plus(Duration.ofMinutes(209))),
                false);
        assertThat(charge.late()).isTrue();
    }

    private static Round withPlaces(int places) {
        Store store = AgreedWeekKit.ROUND.store();
        List<StoreItem> items = new ArrayList<>();
        for (StoreItem item : store.items()) {
            items.add(
                    item.kind().equals("charger")
                            ? new StoreItem(
                                    item.id(),
                                    item.kind(),
                                    item.label(),
                                    places,
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
                                    item.detail())
                            : item);
        }
        return AgreedWeekKit.ROUND.with(
                new Store(store.kitSets(), items, store.needs(), store.packSeconds(), store.voltageCeilings()));
    }
}
