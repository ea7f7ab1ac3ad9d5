package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** What must hold of any numbers: more effort never meets less, a weaker pack never lasts longer. */
class EffortPropertyTest {

    private static final String SEED = "20270906";

    @Property(seed = SEED)
    void aLongerReachAndMoreUnitsNeverMeetLess(
            @ForAll @DoubleRange(min = 1, max = 1000) double lengthM,
            @ForAll @DoubleRange(min = 0, max = 500) double moreM,
            @ForAll @DoubleRange(min = 0.01, max = 1) double perUnit,
            @ForAll @IntRange(min = 1, max = 200) int units) {
        assertThat(Accumulation.BY_METRE.shareAt(lengthM + moreM))
                .isGreaterThanOrEqualTo(Accumulation.BY_METRE.shareAt(lengthM))
                .isBetween(0.0, 1.0);
        assertThat(Detection.probability(perUnit, units + 1))
                .isGreaterThanOrEqualTo(Detection.probability(perUnit, units));
    }

    @Property(seed = SEED)
    void unitsNeededAreEnoughAndOneFewerIsNot(
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double perUnit,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double target) {
        int units = Detection.unitsNeeded(perUnit, target);
        assertThat(Detection.probability(perUnit, units)).isGreaterThanOrEqualTo(target - 1e-9);
        if (units > 1) {
            assertThat(Detection.probability(perUnit, units - 1)).isLessThan(target + 1e-9);
        }
        assertThat(Detection.unitsNeeded(Detection.perUnitNeeded(target, units), target))
                .isEqualTo(units);
    }

    @Property(seed = SEED)
    void blanksNeededAreEnoughAndOneFewerIsNot(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double presence,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double perUnit,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double limit) {
        int blanks = Detection.blanksNeeded(presence, perUnit, limit);
        assertThat(Detection.presenceAfterBlanks(presence, perUnit, blanks)).isLessThanOrEqualTo(limit + 1e-9);
        if (blanks > 0) {
            assertThat(Detection.presenceAfterBlanks(presence, perUnit, blanks - 1))
                    .isGreaterThan(limit - 1e-9);
        }
    }

    @Property(seed = SEED)
    void theCurveRunsThroughItsPointAndBack(
            @ForAll @DoubleRange(min = 0.05, max = 0.99) double share,
            @ForAll @DoubleRange(min = 1, max = 1000) double length) {
        Accumulation curve = Accumulation.through(share, length);
        assertThat(curve.shareAt(length)).isCloseTo(share, within(1e-9));
        assertThat(curve.lengthFor(share)).isCloseTo(length, within(1e-6));
    }

    @Property(seed = SEED)
    void aWeakerPackNeverLastsLongerAndNeverNeedsFewer(
            @ForAll @DoubleRange(min = 1, max = 1000) double neededWh,
            @ForAll @DoubleRange(min = 10, max = 100) double healthPct,
            @ForAll @DoubleRange(min = 0, max = 90) double lossPct) {
        double weaker = Math.max(5, healthPct - lossPct);
        double usable = BatteryEnergy.usableWh(168, 0.8, 0.8, healthPct);
        double less = BatteryEnergy.usableWh(168, 0.8, 0.8, Math.min(healthPct, weaker));
        assertThat(BatteryEnergy.packs(neededWh, less)).isGreaterThanOrEqualTo(BatteryEnergy.packs(neededWh, usable));
        assertThat(BatteryEnergy.minutes(less, 100)).isLessThanOrEqualTo(BatteryEnergy.minutes(usable, 100));
    }

    @Property(seed = SEED)
    void lowerHealthInTheStoreNeverTakesFewerPacks(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 20, max = 100) Integer> healthPct,
            @ForAll @IntRange(min = 1, max = 6000) int shockS,
            @ForAll @IntRange(min = 0, max = 19) int loss) {
        BatteryNeed need = new BatteryNeed(shockS, 1700, 1.25, 1, "test");
        List<StoreItem> weaker = packs(healthPct.stream().map(pct -> pct - loss).toList());
        PackHealth before = PackHealth.of(packs(healthPct), need);
        PackHealth after = PackHealth.of(weaker, need);
        assertThat(after.packs().size()).isGreaterThanOrEqualTo(before.packs().size());
        if (!before.enough()) {
            assertThat(after.enough()).isFalse();
        }
    }

    @Property(seed = SEED)
    void conductivityTurnsThereAndBackByBothRules(
            @ForAll @DoubleRange(min = 0.1, max = 60_000) double specificUsCm,
            @ForAll @DoubleRange(min = -5, max = 40) double tempC) {
        for (String rule : List.of("linear", "exponential")) {
            ConductivityConversion conversion = ConductivityConversion.of(new ConductivityRule(rule, 0.02, "test"))
                    .orElseThrow();
            double ambient = conversion.toAmbient(specificUsCm, tempC).valueUsCm();
            assertThat(conversion.toSpecific(ambient, tempC).valueUsCm())
                    .isCloseTo(specificUsCm, within(1e-9 * specificUsCm));
            assertThat(ambient <= specificUsCm).isEqualTo(tempC <= 25);
        }
    }

    @Property(seed = SEED)
    void thePaceAddsUpAndIsEven(
            @ForAll @IntRange(min = 0, max = 20_000) int shockS, @ForAll @IntRange(min = 1, max = 26) int subReaches) {
        List<PaceStep> steps = PaceStep.of(shockS, subReaches);
        assertThat(steps).hasSize(subReaches);
        assertThat(steps.stream().mapToInt(PaceStep::expectedS).sum()).isEqualTo(shockS);
        assertThat(steps.get(subReaches - 1).totalS()).isEqualTo(shockS);
        assertThat(steps).allSatisfy(step -> assertThat(Math.abs(step.expectedS() - shockS / (double) subReaches))
                .isLessThanOrEqualTo(1));
    }

    @Property(seed = SEED)
    void aMixedMedianLiesBetweenTheModelAndTheSitesOwn(
            @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 1, max = 1000) Double> own,
            @ForAll @DoubleRange(min = 1, max = 1000) double model) {
        double median = Quantile.median(own);
        double mixed = OwnHistory.median(own, model);
        assertThat(mixed).isBetween(Math.min(median, model) - 1e-9, Math.max(median, model) + 1e-9);
        if (own.size() >= OwnHistory.FULL_VISITS) {
            assertThat(mixed).isCloseTo(median, within(1e-9));
        }
    }

    @Example
    void numbersThatMeanNothingAreRefused() {
        assertThatThrownBy(() -> Detection.probability(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Detection.probability(0.5, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Detection.unitsNeeded(0.5, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Detection.blanksNeeded(1, 0.5, 0.05)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Accumulation.through(1, 150)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BatteryEnergy.minutes(100, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BatteryEnergy.packs(100, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Electrodes.sphereOhm(0.2, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CatchRate(-1, 150, 4, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WelfareSums.stockMl(-1, 10, 540)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WelfareSums.buckets(10, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<StoreItem> packs(List<Integer> healthPct) {
        List<StoreItem> packs = new ArrayList<>();
        for (int i = 0; i < healthPct.size(); i++) {
            packs.add(new StoreItem(
                    "P" + i,
                    "battery-pack",
                    "pack",
                    1,
                    "each",
                    Optional.empty(),
                    Material.HARD,
                    StoreState.CLEAN_DRY,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.of(healthPct.get(i)),
                    List.of()));
        }
        return packs;
    }
}
