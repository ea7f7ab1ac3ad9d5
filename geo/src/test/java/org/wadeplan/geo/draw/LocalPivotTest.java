package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LocalPivotTest {

    private static final double[] ZERO = new double[4];

    private static int[] draw(long seed, long whole, long[] shares, double... eastM) {
        return LocalPivot.draw(shares, whole, eastM, Arrays.copyOf(ZERO, eastM.length), new SplitMix64(seed));
    }

    /**
     * By hand from the rule of Grafström, Lundström & Schelin 2012: two pairs far apart, everyone at one half. Whoever
     * begins meets its own partner, the sum is 1, and so each pair sends exactly one.
     */
    @Test
    void ofTwoCloseNeighboursAtOneHalfExactlyOneIsDrawn() {
        for (long seed = 0; seed < 500; seed++) {
            int[] drawn = draw(seed, 2, new long[] {1, 1, 1, 1}, 0, 1, 100, 101);

            assertThat(drawn).hasSize(2);
            assertThat(drawn[0]).isLessThan(2);
            assertThat(drawn[1]).isGreaterThan(1);
        }
    }

    @Test
    void certainUnitsAreAlwaysAndImpossibleOnesNeverDrawn() {
        for (long seed = 0; seed < 200; seed++) {
            int[] drawn = draw(seed, 4, new long[] {4, 0, 1, 3}, 0, 1, 2, 3);

            assertThat(drawn).hasSize(2).contains(0).doesNotContain(1);
        }
    }

    /** Chances of unequal size hold: 40,000 draws, each count within five standard deviations of the binomial. */
    @Test
    void everyUnitIsDrawnAsOftenAsItsProbabilitySays() {
        long[] shares = {1, 9, 3, 7, 5, 5, 2, 8};
        int draws = 40_000;
        int[] counts = new int[shares.length];
        for (long seed = 0; seed < draws; seed++) {
            for (int unit : LocalPivot.draw(
                    shares,
                    10,
                    new double[] {0, 3, 4, 9, 1, 1, 7, 2},
                    new double[] {5, 1, 1, 0, 8, 8, 3, 2},
                    new SplitMix64(seed))) {
                counts[unit]++;
            }
        }

        for (int unit = 0; unit < shares.length; unit++) {
            double probability = shares[unit] / 10.0;
            double deviation = Math.sqrt(draws * probability * (1 - probability));
            assertThat((counts[unit] - draws * probability) / deviation).isBetween(-5.0, 5.0);
        }
    }

    @Property(tries = 100)
    void theSumOfProbabilitiesNeverChangesAndTheSizeIsExact(
            @ForAll long seed,
            @ForAll @IntRange(min = 2, max = 60) int count,
            @ForAll @IntRange(min = 1, max = 30) int wanted) {
        SplitMix64 random = new SplitMix64(seed);
        long[] lengths = new long[count];
        double[] eastM = new double[count];
        double[] northM = new double[count];
        for (int i = 0; i < count; i++) {
            lengths[i] = 1 + random.below(100_000);
            eastM[i] = random.below(50);
            northM[i] = random.below(50);
        }
        long whole = Arrays.stream(lengths).sum();
        int size = Math.min(wanted, (int) (whole / Arrays.stream(lengths).max().orElseThrow()));
        long[] shares = Arrays.stream(lengths).map(length -> size * length).toArray();
        LocalPivot pivot = new LocalPivot(shares, whole, eastM, northM, random);
        while (pivot.undecidedCount() > 0) {
            int before = pivot.undecidedCount();
            pivot.bout();
            long sum = 0;
            for (int i = 0; i < count; i++) {
                assertThat(pivot.sharesOf(i)).isBetween(0L, whole);
                sum += pivot.sharesOf(i);
            }
            assertThat(sum).isEqualTo(size * whole);
            assertThat(pivot.undecidedCount()).isLessThan(before);
        }

        assertThat(LocalPivot.draw(shares, whole, eastM, northM, new SplitMix64(seed)))
                .hasSize(size);
    }

    @Test
    void sharesThatMakeNoWholeNumberOfUnitsAreABug() {
        assertThatThrownBy(() -> draw(1, 10, new long[] {5, 6}, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> draw(1, 10, new long[] {11, -1}, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
