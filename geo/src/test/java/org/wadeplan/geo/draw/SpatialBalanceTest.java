package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpatialBalanceTest {

    /**
     * By hand from the definition of Stevens & Olsen 2004: four units in a row, two drawn, each with probability one half.
     * Drawing the first two leaves one half to the first and three halves to the second: B = 1/4.
     */
    @ParameterizedTest
    @CsvSource({"0, 1, 0.25", "1, 2, 0", "0, 3, 0", "0, 2, 0", "2, 3, 0.25"})
    void isTheMeanSquareOfWhatFallsToEachDrawnUnit(int first, int second, double expected) {
        double[] eastM = {0, 10, 20.1, 30};

        assertThat(SpatialBalance.of(
                        new int[] {first, second}, eastM, new double[4], new double[] {0.5, 0.5, 0.5, 0.5}))
                .isEqualTo(expected, within(1e-12));
    }
}
