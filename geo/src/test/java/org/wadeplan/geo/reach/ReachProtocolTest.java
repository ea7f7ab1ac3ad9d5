package org.wadeplan.geo.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;

class ReachProtocolTest {

    private static final LengthRule FORTY = new LengthRule.Widths(40, 150, 4000, Optional.empty());

    private static Optional<MeanWidth> width(double widthM) {
        return Optional.of(new MeanWidth(widthM, "measured at the site"));
    }

    @Test
    void aFixedLengthNeedsNoWidth() {
        ReachProtocol protocol = ReachProtocol.of(new ReachRule(150, 10, "common practice"));

        assertThat(protocol.at(Optional.empty()))
                .isEqualTo(new Sizing.Sized(new ReachRule(150, 10, "common practice"), "150 m fixed"));
        assertThat(protocol.words()).isEqualTo("150 m fixed, 10 sub-reaches");
        assertThat(protocol.fixedRule()).contains(new ReachRule(150, 10, "common practice"));
    }

    @Test
    void aLengthByWidthSaysHowItCameAbout() {
        ReachProtocol protocol = new ReachProtocol(FORTY, new SubReachRule.Equal(10), "common practice");

        assertThat(protocol.at(width(4.2)))
                .isEqualTo(new Sizing.Sized(
                        new ReachRule(168, 10, "common practice"),
                        "40 x 4.2 m (measured at the site), held to 150-4000 m"));
        assertThat(protocol.fixedRule()).isEmpty();
        assertThat(protocol.leastLengthM()).isEqualTo(150);
    }

    @Test
    void withoutAWidthThereIsNoLengthAndTheReason() {
        assertThat(new ReachProtocol(FORTY, new SubReachRule.Equal(10), "common practice").at(Optional.empty()))
                .isEqualTo(new Sizing.Unsized("the length is 40 x the mean wetted width, 150 to 4000 m, and no width is"
                        + " known here: not at the site, in no past visit, by no regional curve"));
    }

    /** Whole sub-reaches, rounded up, but never over the cap. */
    @ParameterizedTest
    @CsvSource({"4.2, 180, 12", "3.75, 150, 10", "3.76, 165, 11", "1, 150, 10", "9.75, 390, 26"})
    void subReachesOfOneLengthMakeWholeReaches(double widthM, double lengthM, int count) {
        ReachProtocol protocol = new ReachProtocol(FORTY, new SubReachRule.OfLength(15), "common practice");

        assertThat(((Sizing.Sized) protocol.at(width(widthM))).rule())
                .isEqualTo(new ReachRule(lengthM, count, "common practice"));
    }

    @Test
    void aCapThatIsNoWholeNumberOfSubReachesIsNotBroken() {
        LengthRule capped = new LengthRule.Widths(20, 150, 310, Optional.empty());
        ReachProtocol protocol = new ReachProtocol(capped, new SubReachRule.OfLength(15), "common practice");

        assertThat(((Sizing.Sized) protocol.at(width(16))).rule()).isEqualTo(new ReachRule(300, 20, "common practice"));
    }

    @Test
    void lettersEndAtZ() {
        ReachProtocol protocol = new ReachProtocol(FORTY, new SubReachRule.OfLength(15), "common practice");

        assertThat(protocol.at(width(9.76)))
                .isEqualTo(new Sizing.Unsized(
                        "390 m fall into 27 sub-reaches of 15 m, and letters reach from A to Z: 1 to 26"));
        assertThatThrownBy(() -> new SubReachRule.Equal(27)).hasMessageContaining("27");
    }

    @Test
    void theBestKnownWidthIsTheSitesThenTheMedianOfPastVisitsThenTheCurves() {
        Optional<MeanWidth> curve = Optional.of(new MeanWidth(9, "regional curve"));

        assertThat(MeanWidth.best(OptionalDouble.of(4), List.of(5.0), curve))
                .contains(new MeanWidth(4, "measured at the site"));
        assertThat(MeanWidth.best(OptionalDouble.empty(), List.of(7.0, 3.0, 4.0), curve))
                .contains(new MeanWidth(4, "median of 3 past visits"));
        assertThat(MeanWidth.best(OptionalDouble.empty(), List.of(7.0, 3.0), curve))
                .contains(new MeanWidth(5, "median of 2 past visits"));
        assertThat(MeanWidth.best(OptionalDouble.empty(), List.of(), curve)).isEqualTo(curve);
    }

    @Test
    void aCurveTakesTheLengthUpstreamOnlyIfTheUserSaysSo() {
        WidthCurve without = new WidthCurve(
                3, 0.5, WidthCurve.AreaUnit.KM2, WidthCurve.WidthUnit.M, OptionalDouble.empty(), "by hand");
        WidthCurve with = new WidthCurve(
                3, 0.5, WidthCurve.AreaUnit.KM2, WidthCurve.WidthUnit.M, OptionalDouble.of(0.5), "by hand");

        assertThat(without.width(OptionalDouble.empty(), OptionalDouble.of(8000)))
                .isEmpty();
        assertThat(with.width(OptionalDouble.empty(), OptionalDouble.of(8000)))
                .contains(new MeanWidth(
                        6, "regional curve for 4.0 km2, area guessed from the length of line upstream; not measured"));
        assertThat(with.width(OptionalDouble.of(16), OptionalDouble.of(8000))
                        .orElseThrow()
                        .widthM())
                .isEqualTo(12);
    }
}
