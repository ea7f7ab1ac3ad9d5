package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class NestedOrderTest {

    private static double[] scattered(int count, long seed) {
        SplitMix64 random = new SplitMix64(seed);
        double[] ordinate = new double[count];
        for (int i = 0; i < count; i++) {
            ordinate[i] = random.below(1_000_000);
        }
        return ordinate;
    }

    @Property(tries = 100)
    void everyUnitHasOnePlaceInTheOrder(@ForAll long seed, @ForAll @IntRange(min = 0, max = 60) int count) {
        int[] units = new int[count];
        for (int i = 0; i < count; i++) {
            units[i] = i;
        }

        assertThat(new NestedOrder(scattered(count, seed), scattered(count, ~seed), new SplitMix64(seed)).order(units))
                .containsExactlyInAnyOrder(units);
    }

    /** For seven units and every k: 7,000 orders, each count within five standard deviations. */
    @Test
    void everyUnitIsEquallyLikelyAmongTheFirst() {
        int orders = 7_000;
        int[] units = {0, 1, 2, 3, 4, 5, 6};
        int[][] amongFirst = new int[7][7];
        for (long seed = 0; seed < orders; seed++) {
            int[] order = new NestedOrder(scattered(7, 11), scattered(7, 12), new SplitMix64(seed)).order(units);
            for (int place = 0; place < 7; place++) {
                for (int k = place; k < 7; k++) {
                    amongFirst[k][order[place]]++;
                }
            }
        }

        for (int k = 0; k < 6; k++) {
            double probability = (k + 1) / 7.0;
            double deviation = Math.sqrt(orders * probability * (1 - probability));
            for (int count : amongFirst[k]) {
                assertThat((count - orders * probability) / deviation).isBetween(-5.0, 5.0);
            }
        }
        assertThat(amongFirst[6]).containsOnly(orders);
    }
}
