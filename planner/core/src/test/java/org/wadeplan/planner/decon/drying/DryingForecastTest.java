package org.wadeplan.planner.decon.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** Estimates through the demo's forecast, and where nothing can be said. */
class DryingForecastTest {

    private static final Round ROUND = DemoRound.troubled();

    private static DryEstimate estimate(String kitSet, String wetUntil) {
        return new DryingForecast(ROUND).of(ROUND.store().kitSet(kitSet).orElseThrow(), Instant.parse(wetUntil));
    }

    /** 60 g on 0.2 m2 by factor 1.5 are 450 g/m2; at 16 C and 75 % about 28 g/m2 leave in an hour. */
    @Test
    void theSlowestItemOfASetCounts() {
        DryEstimate estimate = estimate("K4", "2027-09-07T19:20:00Z");

        assertThat(estimate.slowest()).isEqualTo("measuring tape");
        assertThat(estimate.about().orElseThrow())
                .isBetween(Instant.parse("2027-09-08T09:00:00Z"), Instant.parse("2027-09-08T20:00:00Z"));
    }

    @Test
    void anItemWithoutAClassCountsAsTheSlowestOfItsMaterial() {
        KitSet rope = new KitSet(
                "TL1",
                KitPurpose.WADING,
                Set.of(Material.ABSORBENT),
                StoreState.CLEAN_DRY,
                List.of(),
                Optional.empty(),
                Optional.empty());

        assertThat(new DryingForecast(ROUND.with(unclassed(ROUND.store())))
                        .of(rope, Instant.parse("2027-09-07T19:20:00Z"))
                        .slowest())
                .isEqualTo("rope and webbing (the slowest of its material; no gear class on file)");
    }

    private static Store unclassed(Store store) {
        List<StoreItem> items = store.items().stream()
                .map(item -> new StoreItem(
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
                        item.certificates()))
                .toList();
        return new Store(store.kitSets(), items, store.needs(), store.packSeconds(), store.voltageCeilings());
    }

    @Test
    void feltIsNotDryBeforeTheForecastEnds() {
        DryEstimate estimate = estimate("K3", "2027-09-08T16:15:00Z");

        assertThat(estimate.about()).isEmpty();
        assertThat(estimate.why()).contains("forecast.csv has no temperatures and humidity for 2027-09-11");
    }

    @Test
    void inSaturatedAirNothingDries() {
        assertThat(DryToTouch.evaporationGM2H(12, 100, DryToTouch.STILL_AIR_MS)).isLessThan(0.01);
    }

    @Test
    void plannedDaysStayBetweenTwoAndThirtyAndKeepToTheRule() {
        assertThat(MusselSurvival.plannedDays(5, 90, 0)).isEqualTo(30);
        assertThat(MusselSurvival.plannedDays(25, 0, 7)).isEqualTo(7);
    }

    @Test
    void impossibleAirIsAFault() {
        assertThatIllegalArgumentException().isThrownBy(() -> Psychrometry.wetBulbC(Double.NaN, 50));
        assertThatIllegalArgumentException().isThrownBy(() -> Psychrometry.wetBulbC(20, 101));
    }
}
