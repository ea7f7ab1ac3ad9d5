package org.wadeplan.hazards.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The properties wanted of a rating table are those of Cox 2008 (Risk Analysis 28:497-512), as summarised in public. */
class RiskScoreTest {

    private static Stream<RiskScore> all() {
        return IntStream.rangeClosed(1, 5).boxed().flatMap(l -> IntStream.rangeClosed(1, 5)
                .mapToObj(c -> new RiskScore(l, c)));
    }

    @Test
    void theScoreIsTheLogarithmOfChanceTimesHarm() {
        // 1e-1 a visit x 10 000 = 1000; 1e-5 x 1 = 1e-5 (worked by hand)
        assertThat(new RiskScore(5, 5).log10()).isEqualTo(3);
        assertThat(new RiskScore(1, 1).log10()).isEqualTo(-5);
        assertThat(all()).allSatisfy(score -> assertThat(score.log10()).isEqualTo((int)
                Math.round(Math.log10(Math.pow(10, score.likelihood() - 6) * Math.pow(10, score.consequence() - 1)))));
    }

    @Test
    void theBandNeverEasesAlongEitherAxis() {
        all().filter(score -> score.likelihood() < 5)
                .forEach(score -> assertThat(new RiskScore(score.likelihood() + 1, score.consequence()).band())
                        .isLessThanOrEqualTo(score.band()));
        all().filter(score -> score.consequence() < 5)
                .forEach(score -> assertThat(new RiskScore(score.likelihood(), score.consequence() + 1).band())
                        .isLessThanOrEqualTo(score.band()));
    }

    @Test
    void theBandNeverContradictsTheScore() {
        all().forEach(a -> all().filter(b -> a.log10() > b.log10())
                .forEach(b -> assertThat(a.band()).isLessThanOrEqualTo(b.band())));
    }

    @Test
    void theTopBandNeverTouchesTheBottomBand() {
        all().filter(score -> score.band() == Band.A)
                .forEach(score -> all().filter(near -> Math.abs(near.likelihood() - score.likelihood()) <= 1
                                && Math.abs(near.consequence() - score.consequence()) <= 1)
                        .forEach(near -> assertThat(near.band()).isNotEqualTo(Band.D)));
    }

    @Test
    void theLowestLineOfEitherAxisHasNoTopBand() {
        assertThat(all().filter(score -> score.likelihood() == 1 || score.consequence() == 1))
                .noneMatch(score -> score.band() == Band.A);
    }

    @Test
    void everyBandIsUsed() {
        assertThat(all().map(RiskScore::band).distinct()).containsExactlyInAnyOrder(Band.values());
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "6, 1", "1, 0", "1, 6"})
    void indicesOutsideOneToFiveAreABug(int likelihood, int consequence) {
        assertThatThrownBy(() -> new RiskScore(likelihood, consequence)).isInstanceOf(IllegalArgumentException.class);
    }
}
