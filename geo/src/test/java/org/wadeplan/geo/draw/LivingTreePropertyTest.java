package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LivingTreePropertyTest {

    /** Few different ordinates, so that many points are equally far off or in one place. */
    @Property(tries = 200)
    void theNearestIsThatOfLookingAtEveryPoint(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 120) int count,
            @ForAll @IntRange(min = 2, max = 40) int steps) {
        SplitMix64 random = new SplitMix64(seed);
        double[] eastM = new double[count];
        double[] northM = new double[count];
        for (int i = 0; i < count; i++) {
            eastM[i] = random.below(steps);
            northM[i] = random.below(steps);
        }
        LivingTree tree = new LivingTree(eastM, northM);
        boolean[] gone = new boolean[count];
        for (int left = count; left > 0; left--) {
            int asked = (int) random.below(count);
            assertThat(tree.nearestOther(asked)).isEqualTo(bySight(eastM, northM, gone, asked));
            int taken = (int) random.below(count);
            while (gone[taken]) {
                taken = (taken + 1) % count;
            }
            tree.remove(taken);
            gone[taken] = true;
        }
        assertThat(tree.nearest(0, 0)).isEqualTo(-1);
    }

    private static int bySight(double[] eastM, double[] northM, boolean[] gone, int asked) {
        int best = -1;
        double bestM = Double.POSITIVE_INFINITY;
        for (int i = 0; i < eastM.length; i++) {
            double offM = Math.hypot(eastM[i] - eastM[asked], northM[i] - northM[asked]);
            if (i != asked && !gone[i] && offM < bestM) {
                best = i;
                bestM = offM;
            }
        }
        return best;
    }
}
