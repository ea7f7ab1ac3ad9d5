package org.wadeplan.hazards.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.hazards.limits.PersonStability.Footing;
import org.wadeplan.hazards.limits.WadingLimit.Cap;
import org.wadeplan.hazards.limits.WadingLimit.Measure;
import org.wadeplan.hazards.limits.WadingLimit.Water;

class LimitsTest {

    static Stream<Arguments> answeredAtTheEdgeAndRefusedJustOutside() {
        return Stream.of(
                Arguments.of(HeatIndex.rawF(80, 50), HeatIndex.rawF(79.9, 50), "79.9"),
                Arguments.of(HeatIndex.rawF(112, 50), HeatIndex.rawF(112.1, 50), "112.1"),
                Arguments.of(HeatIndex.fullF(40, 0), HeatIndex.fullF(39.9, 0), "39.9"),
                Arguments.of(HeatIndex.fullF(90, 100), HeatIndex.fullF(90, 100.1), "100.1"),
                Arguments.of(HeatIndex.fullC(44.4, 20), HeatIndex.fullC(44.5, 20), "112"),
                Arguments.of(WindChill.chillC(10, 20), WindChill.chillC(10.1, 20), "10.1"),
                Arguments.of(WindChill.chillC(0, 4.9), WindChill.chillC(0, 4.8), "4.8"),
                Arguments.of(WindChill.chillF(50, 20), WindChill.chillF(50.1, 20), "50.1"),
                Arguments.of(WindChill.chillF(0, 3.1), WindChill.chillF(0, 3), "more than 3"),
                Arguments.of(WetBulbEstimate.globeC(15, 50), WetBulbEstimate.globeC(14.9, 50), "14.9"),
                Arguments.of(Lightning.distanceMi(120), Lightning.distanceMi(121), "121"),
                Arguments.of(Lightning.distanceKm(0, 20), Lightning.distanceKm(-1, 20), "-1"),
                Arguments.of(Lightning.soundSpeedMS(50), Lightning.soundSpeedMS(51), "51"),
                Arguments.of(RiseTime.kirpichMin(1, 1), RiseTime.kirpichMin(0, 1), "more than 0"),
                Arguments.of(RiseTime.kirpichMin(10, 0.001), RiseTime.kirpichMin(10, 0), "Slope"),
                Arguments.of(RiseTime.pilgrimMcDermottMin(1000), RiseTime.pilgrimMcDermottMin(1001), "1001"),
                Arguments.of(RiseTime.bransbyWilliamsMin(1, 1, 1000), RiseTime.bransbyWilliamsMin(1, 1, 1001), "1001"),
                Arguments.of(
                        PersonStability.abtM2S(new Wader(2, 30)), PersonStability.abtM2S(new Wader(2, 29.9)), "59.8"),
                Arguments.of(
                        PersonStability.finnishM2S(new Wader(1.8, 100), Footing.POOR),
                        PersonStability.finnishM2S(new Wader(1.8, 100.1), Footing.POOR),
                        "180.18"),
                Arguments.of(FloodRating.of(1, 1, 1), FloodRating.of(1, 1, 1.1), "1.1"),
                Arguments.of(
                        LiftingLimit.recommendedKg(new LiftingLimit.Lift(63, 75, 25, 0, 1, 1)),
                        LiftingLimit.recommendedKg(new LiftingLimit.Lift(63.1, 75, 25, 0, 1, 1)),
                        "63.1"),
                Arguments.of(
                        ReadingEase.grade(new ReadingEase.Count(1, 1, 1)),
                        ReadingEase.grade(new ReadingEase.Count(0, 1, 0)),
                        "words is 0"));
    }

    @ParameterizedTest
    @MethodSource
    void answeredAtTheEdgeAndRefusedJustOutside(Estimate atEdge, Estimate outside, String named) {
        assertThat(atEdge).isInstanceOf(Estimate.Known.class);
        assertThat(outside.value()).isEmpty();
        assertThat(outside.fold(known -> "", Estimate.Refused::reason)).contains(named);
    }

    @Test
    void aReadingThatIsNotANumberIsRefusedAndNotPrintedAsOne() {
        assertThat(WindChill.chillC(Double.NaN, 20))
                .isEqualTo(Estimate.refused("Air temperature in C is not a number; wind chill covers -50 to 10"));
        assertThat(WindChill.chillC(0, Double.POSITIVE_INFINITY).value()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-2.1", "45.1", "NaN"})
    void aWaterTemperatureNoStreamHasGetsNoBand(double waterC) {
        assertThat(ColdWater.ofC(waterC)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-0.1", "100.1", "NaN"})
    void aCoverThatIsNoShareGetsNoLevel(double coverPct) {
        assertThat(BenthicMats.ofCoverPct(coverPct)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "-9.9, UNPLEASANT",
        "-10, HYPOTHERMIA_IF_LONG",
        "-28, FROSTBITE_10_TO_30_MIN",
        "-40, FROSTBITE_5_TO_10_MIN",
        "-48, FROSTBITE_2_TO_5_MIN",
        "-55, FROSTBITE_UNDER_2_MIN"
    })
    void windChillStepsBelongToTheColderBand(double chillC, WindChillBand band) {
        assertThat(WindChillBand.ofC(chillC)).isEqualTo(band);
    }

    @Test
    void aWetCrewIsOneBandColder() {
        assertThat(WindChillBand.ofC(-12).wet()).isEqualTo(WindChillBand.FROSTBITE_10_TO_30_MIN);
        assertThat(WindChillBand.ofC(-60).wet()).isEqualTo(WindChillBand.FROSTBITE_UNDER_2_MIN);
    }

    @Test
    void thirtySecondsIsTenKilometresAtTwentyDegrees() {
        // 30 s = 9.9 to 10.3 km between 0 and 20 C: computed by hand from the speed of sound
        assertThat(Lightning.distanceKm(30, 0).value().orElseThrow()).isBetween(9.9, 9.95);
        assertThat(Lightning.distanceKm(30, 20).value().orElseThrow()).isBetween(10.25, 10.35);
    }

    @ParameterizedTest
    @CsvSource({
        // depth, speed, profile's product limit reached or passed
        "0.6, 1.0, STANDARD, false",
        "0.6, 1.01, STANDARD, true",
        "0.4, 1.0, NEW, false",
        "0.41, 1.0, NEW, true",
        "0.8, 1.0, TRAINED, false",
        "0.8, 1.01, TRAINED, true"
    })
    void theProductLimitAllowsItsEdge(double depthM, double velocityMS, String profile, boolean bites) {
        Cap product = caps(profile(profile), depthM, velocityMS).get(0);
        assertThat(product.measure()).isEqualTo(Measure.DEPTH_VELOCITY);
        assertThat(product.bites()).isEqualTo(bites);
    }

    @ParameterizedTest
    @CsvSource({"0.80, 0.1, ''", "0.81, 0.1, DEPTH", "0.1, 1.5, ''", "0.1, 1.51, VELOCITY"})
    void theCapThatBitesIsNamed(double depthM, double velocityMS, String named) {
        List<String> biting = caps(WadingProfile.STANDARD, depthM, velocityMS).stream()
                .filter(Cap::bites)
                .map(cap -> cap.measure().name())
                .toList();
        assertThat(biting).isEqualTo(named.isEmpty() ? List.of() : List.of(named));
    }

    @Test
    void tenSquareFeetASecondIsItselfTooMuch() {
        Cap nobody = new Cap(
                Measure.DEPTH_VELOCITY, "nobody", WadingProfile.NOBODY_M2S, false, OptionalDouble.of(0.9290304), "s");
        assertThat(nobody.bites()).isTrue();
        // exact by definition: 10 x 0.3048^2
        assertThat(WadingProfile.NOBODY_M2S).isEqualTo(10 * 0.3048 * 0.3048);
    }

    @Test
    void aSmallWaderOnPoorFootingHasALowerLimitThanTheProfile() {
        // Finnish study, poor footing: 0.002 x 1.5 x 45 + 0.1 = 0.235 (from memory)
        Cap product = WadingLimit.caps(
                        WadingProfile.STANDARD, Optional.of(new Wader(1.5, 45)), Footing.POOR, water(0.5, 0.5))
                .get(0);
        assertThat(product.name()).isEqualTo("size of the smallest wader");
        assertThat(product.limit()).isCloseTo(0.235, within(1e-12));
        assertThat(product.bites()).isTrue();
    }

    @Test
    void aBodyOutsideTheStudiesCountsAsANewWader() {
        List<Cap> caps = WadingLimit.caps(
                WadingProfile.TRAINED, Optional.of(new Wader(1.5, 30)), Footing.NORMAL, water(0.5, 0.5));
        assertThat(caps).extracting(Cap::limit).containsExactly(0.4, 0.6, 1.0);
    }

    @Test
    void unknownWaterDoesNotBiteAndIsNotZero() {
        Water unknown = new Water(OptionalDouble.of(0.5), OptionalDouble.empty(), OptionalDouble.empty());
        List<Cap> caps = WadingLimit.caps(WadingProfile.NEW, Optional.empty(), Footing.NORMAL, unknown);
        assertThat(caps.get(0).found()).isEmpty();
        assertThat(caps).noneMatch(Cap::bites);
    }

    @Test
    void noProfileMayPassThePublishedCaps() {
        assertThatThrownBy(() -> new WadingProfile("brave", "brave", 0.93, 1, 1, "nobody"))
                .hasMessageContaining("0.929");
        assertThatThrownBy(() -> new WadingProfile("tall", "tall", 0.6, 1.21, 1, "nobody"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void shippedProfilesGrowFromNewToTrained() {
        assertThat(WadingProfile.shipped())
                .extracting(WadingProfile::depthVelocityM2S)
                .containsExactly(0.4, 0.6, 0.8);
    }

    @Test
    void theEarliestRiseIsHalfTheShortestEstimateRoundedDown() {
        // L 5 km, A 10 km2, S 0.02: Kirpich 61.99, the least of three; half is 31, down to 30 (worked by hand)
        RiseWarning warning = RiseTime.earliestCredible(catchment(5, 10, 0.02));
        assertThat(warning.withinMin()).hasValue(30);
        assertThat(warning.sentence()).contains("within 30 minutes", "guess", "Watch the stick");
    }

    @Test
    void aSmallStreamGetsNoNumberAtAll() {
        // L 2.5 km, S 0.04: Kirpich 27.84, half is under 30 min
        assertThat(RiseTime.earliestCredible(catchment(2.5, 3, 0.04)))
                .isEqualTo(new RiseWarning(
                        OptionalInt.empty(),
                        "This stream is too small to warn you. It can rise within minutes of rain."));
    }

    @Test
    void anUnknownCatchmentGetsAWarningAndNoNumber() {
        RiseWarning warning = RiseTime.earliestCredible(
                new RiseTime.Catchment(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
        assertThat(warning.sentence()).contains("not known", "Watch the stick");
    }

    @Test
    void textIsCountedInWordsSentencesAndSyllables() {
        // counted by hand
        assertThat(ReadingEase.count("Power off. No hand goes in the water - ever."))
                .isEqualTo(new ReadingEase.Count(9, 2, 12));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 1", "140, 1", "141, 2", "450, 4"})
    void minutesAloudAreRoundedUp(int words, int minutes) {
        assertThat(ReadingEase.aloudMin(words)).isEqualTo(minutes);
    }

    private static List<Cap> caps(WadingProfile profile, double depthM, double velocityMS) {
        return WadingLimit.caps(profile, Optional.empty(), Footing.NORMAL, water(depthM, velocityMS));
    }

    private static WadingProfile profile(String name) {
        return WadingProfile.shipped().stream()
                .filter(row -> row.id().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow();
    }

    private static Water water(double depthM, double velocityMS) {
        return new Water(OptionalDouble.of(depthM), OptionalDouble.of(velocityMS), OptionalDouble.empty());
    }

    private static RiseTime.Catchment catchment(double lengthKm, double areaKm2, double slope) {
        return new RiseTime.Catchment(
                OptionalDouble.of(lengthKm), OptionalDouble.of(areaKm2), OptionalDouble.of(slope));
    }
}
