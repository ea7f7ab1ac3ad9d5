package org.wadeplan.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

/** Lines run due east from E 0, so that a place's easting is its chainage. */
class SlopeFitTest {

    private static LineSet straight(double... lengthsM) {
        LineSetBuilder lines = new LineSetBuilder();
        for (double lengthM : lengthsM) {
            lines.add("L" + lines.lineCount(), new double[] {0, 0, lengthM / 3, 0, lengthM, 0}, 3);
        }
        return lines.build();
    }

    private static Ground ground(DoubleUnaryOperator heightAtM, double cellM, double stepM) {
        return new Ground(place -> OptionalDouble.of(heightAtM.applyAsDouble(place.eastM())), cellM, stepM);
    }

    private static DoubleUnaryOperator rounded(double percent, double stepM) {
        return atM -> Math.rint((300 - percent / 100 * atM) / stepM) * stepM;
    }

    @Test
    void aPlainRampIsRecovered() {
        SlopeFit fit = new SlopeFit(straight(2000), ground(atM -> 300 - 0.014 * atM, 10, 0.01));

        FittedSlope slope = fit.along(0, 1150, 1000);

        assertThat(slope.slope()).isInstanceOfSatisfying(Slope.Fitted.class, fitted -> {
            assertThat(fitted.percent()).isEqualTo(1.4, within(1e-9));
            assertThat(fitted.windowM()).isEqualTo(500, within(10.0));
        });
        assertThat(slope.fromM()).isEqualTo(825, within(5.0));
        assertThat(slope.words()).isEqualTo("1.40 % ± 0.00 over 500 m (pool-riffle or plane-bed)");
    }

    @Test
    void aReachAloneCouldNotTellWhatItsWindowTells() {
        Ground ground = ground(rounded(0.5, 1), 30, 1);

        assertThat(new SlopeFit(straight(150), ground).slope(0, 0, 150))
                .isEqualTo(new Slope.Unresolved(
                        "heights in steps of 1 m over 150 m, all that the line has, tell no less than"
                                + " 0.91 % (cells of 30 m, stretch of 150 m)"));
        assertThat(new SlopeFit(straight(2000), ground).along(0, 1000, 1150).words())
                .isEqualTo("0.51 % ± 0.29 over 507 m (pool-riffle)");
    }

    @Test
    void aGentleSlopeGetsALongerWindow() {
        SlopeFit fit = new SlopeFit(straight(5000), ground(rounded(0.2, 1), 30, 1));

        assertThat(fit.along(0, 2500, 2650).words()).isEqualTo("0.22 % ± 0.19 over 778 m (pool-riffle)");
    }

    @Test
    void flatGroundHasNoNumber() {
        SlopeFit fit = new SlopeFit(straight(5000), ground(atM -> 12, 30, 1));

        assertThat(fit.slope(0, 2500, 2650))
                .isEqualTo(new Slope.Unresolved("heights in steps of 1 m over 1018 m tell no less than 0.15 %"
                        + " (cells of 30 m, stretch of 150 m)"));
    }

    @Test
    void strayingHeightsTellLessThanTheirSteps() {
        Random noise = new Random(4);
        double[] stray = noise.doubles(1000, -8, 8).toArray();
        SlopeFit fit =
                new SlopeFit(straight(2000), ground(atM -> 300 - 0.004 * atM + stray[(int) (atM / 5)], 10, 0.01));

        Slope slope = fit.slope(0, 1000, 1150);

        assertThat(slope).isInstanceOfSatisfying(Slope.Unresolved.class, unresolved -> assertThat(unresolved.reason())
                .matches(
                        "heights that stray \\d\\.\\d m from a falling course over 1000 m tell no less than \\d\\.\\d\\d %"
                                + " \\(cells of 10 m, stretch of 150 m\\)"));
    }

    @Test
    void groundThatRisesDownstreamIsNamed() {
        SlopeFit fit = new SlopeFit(straight(2000), ground(atM -> 300 + 0.02 * atM, 10, 1));

        assertThat(fit.slope(0, 1000, 1150))
                .isEqualTo(new Slope.Unresolved(
                        "heights rise downstream by 20.0 m over 1000 m so either the line runs upstream"
                                + " there or the grid misses the valley (cells of 10 m, stretch of 150 m)"));
    }

    @Test
    void cellsTooCoarseForAShortLineAreNamed() {
        SlopeFit fit = new SlopeFit(straight(200), ground(atM -> 300 - 0.2 * atM, 90, 1));

        assertThat(fit.slope(0, 0, 150))
                .isEqualTo(new Slope.Unresolved("cells of 90 m are too coarse for 200 m, all that the line has,"
                        + " which must span at least 3 cells"));
    }

    @Test
    void atALinesEndTheWindowIsMovedAndOnAShortLineItIsCutAndSaid() {
        SlopeFit fit = new SlopeFit(straight(2000, 300), ground(atM -> 300 - 0.03 * atM, 10, 1));

        FittedSlope atEnd = fit.along(0, 2000, 1850);
        assertThat(atEnd.fromM()).isEqualTo(1500);
        assertThat(atEnd.toM()).isEqualTo(2000);
        assertThat(atEnd.shortened()).isFalse();
        FittedSlope whole = fit.along(1, 300, 150);
        assertThat(whole.shortened()).isTrue();
        assertThat(whole.words()).isEqualTo("3.00 % ± 0.49 over 300 m, all of the line (step-pool)");
    }

    @Test
    void withoutEnoughHeightsThereIsNoNumber() {
        Ground half = new Ground(
                place -> place.eastM() < 1000 ? OptionalDouble.of(300 - 0.03 * place.eastM()) : OptionalDouble.empty(),
                10,
                1);

        assertThat(new SlopeFit(straight(2000), half).slope(0, 925, 1075))
                .isEqualTo(new Slope.Unresolved("the grid has no height for 50 % of 1000 m"));
        assertThat(new SlopeFit(straight(2000), Ground.UNKNOWN).slope(0, 925, 1075))
                .isEqualTo(new Slope.Unresolved("the round has no grid of elevations"));
    }

    @Test
    void theAnswerDoesNotDependOnWhatWasAskedBefore() {
        LineSet lines = straight(2000, 900);
        Ground ground = ground(rounded(1.7, 1), 30, 1);
        SlopeFit asked = new SlopeFit(lines, ground);
        asked.slope(0, 0, 150);
        asked.slope(1, 0, 150);

        assertThat(asked.along(0, 700, 850)).isEqualTo(new SlopeFit(lines, ground).along(0, 700, 850));
        assertThat(asked.along(0, 850, 700)).as("drawn the other way").isEqualTo(asked.along(0, 700, 850));
    }

    /** The bound is strict for heights off by half a step at most, whatever the pattern. */
    @Property(tries = 300)
    void noPatternOfRoundingCarriesTheSlopeOutOfItsBound(
            @ForAll @DoubleRange(min = 0, max = 12) double percent,
            @ForAll @DoubleRange(min = 0.1, max = 5) double stepM,
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        double[] off = random.doubles(1000, -stepM / 2, stepM / 2).toArray();
        Ground ground = ground(atM -> 900 - percent / 100 * atM + off[(int) Math.rint(atM / 5)], 10, stepM);

        FittedSlope slope = new SlopeFit(straight(2000), ground).along(0, 1000, 1150);

        if (slope.slope() instanceof Slope.Fitted fitted) {
            assertThat(fitted.percent()).isEqualTo(percent, within(slope.plusMinusPercent() + 1e-9));
            assertThat(fitted.percent()).isGreaterThanOrEqualTo(slope.plusMinusPercent());
        } else {
            // A slope that is not told is less than twice what the longest window can tell.
            assertThat(percent).isLessThan(2 * 100 * 3.1 * stepM / 2 / 1000);
        }
    }
}
