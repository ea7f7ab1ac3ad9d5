package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SplitMix64Test {

    /** Source: the numbers usually given to check ports of SplitMix64, seed 1234567; from memory. */
    @Test
    void givesThePublishedNumbers() {
        SplitMix64 random = new SplitMix64(1234567);

        assertThat(LongStream.generate(random::nextLong)
                        .limit(5)
                        .mapToObj(Long::toUnsignedString)
                        .toList())
                .containsExactly(
                        "6457827717110365317",
                        "3203168211198807973",
                        "9817491932198370423",
                        "4593380528125082431",
                        "16408922859458223821");
    }

    /** Source: the authors' own implementation of the same paper in this Java's class library. */
    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 20270906, Long.MIN_VALUE, Long.MAX_VALUE})
    void agreesWithTheClassOfItsAuthors(long seed) {
        SplitMix64 ours = new SplitMix64(seed);
        SplittableRandom theirs = new SplittableRandom(seed);

        for (int i = 0; i < 1000; i++) {
            assertThat(ours.nextLong()).isEqualTo(theirs.nextLong());
        }
    }

    @Test
    void numbersBelowABoundAreEquallyLikely() {
        SplitMix64 random = new SplitMix64(7);
        int[] counts = new int[6];
        for (int i = 0; i < 60_000; i++) {
            counts[(int) random.below(6)]++;
        }

        double chiSquare = 0;
        for (int count : counts) {
            chiSquare += (count - 10_000.0) * (count - 10_000.0) / 10_000.0;
        }
        assertThat(chiSquare)
                .as("0.999 point of chi-square with 5 degrees of freedom")
                .isLessThan(20.52);
    }

    @Test
    void partsOfADrawHaveNumbersOfTheirOwn() {
        assertThat(SplitMix64.forPart(1, "2").nextLong())
                .isEqualTo(SplitMix64.forPart(1, "2").nextLong())
                .isNotEqualTo(SplitMix64.forPart(1, "3").nextLong())
                .isNotEqualTo(SplitMix64.forPart(2, "2").nextLong());
    }
}
