package org.wadeplan.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class MonotoneFitPropertyTest {

    /**
     * The closed form, in cubic time: the fit at i is the least over starts up to i of the greatest mean from that start to an
     * end from i on, for rising rows; here mirrored for falling ones. Source: Robertson, Wright and Dykstra 1988, Order
     * Restricted Statistical Inference, theorem 1.4.4, from memory.
     */
    private static double[] minimax(double[] heights) {
        double[] fit = new double[heights.length];
        for (int i = 0; i < heights.length; i++) {
            double least = Double.POSITIVE_INFINITY;
            for (int start = 0; start <= i; start++) {
                double greatest = Double.NEGATIVE_INFINITY;
                for (int end = i; end < heights.length; end++) {
                    greatest = Math.max(greatest, mean(heights, start, end));
                }
                least = Math.min(least, greatest);
            }
            fit[i] = least;
        }
        return fit;
    }

    private static double mean(double[] heights, int start, int end) {
        double sum = 0;
        for (int i = start; i <= end; i++) {
            sum += heights[i];
        }
        return sum / (end - start + 1);
    }

    private static double[] row(List<Double> heights) {
        return heights.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Property
    void poolingEqualsTheClosedForm(@ForAll @Size(max = 40) List<@DoubleRange(min = -500, max = 9000) Double> heights) {
        double[] row = row(heights);
        assertThat(MonotoneFit.falling(row)).containsExactly(minimax(row), within(1e-6));
    }

    @Property
    void theFitNeverRisesAndKeepsTheMean(
            @ForAll @Size(min = 1, max = 200) List<@DoubleRange(min = -500, max = 9000) Double> row) {
        double[] heights = row(row);
        double[] fit = MonotoneFit.falling(heights);

        for (int i = 1; i < fit.length; i++) {
            assertThat(fit[i]).isLessThanOrEqualTo(fit[i - 1]);
        }
        assertThat(mean(fit, 0, fit.length - 1)).isEqualTo(mean(heights, 0, heights.length - 1), within(1e-6));
    }
}
