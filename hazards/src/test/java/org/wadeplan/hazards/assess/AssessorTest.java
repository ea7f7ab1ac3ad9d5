package org.wadeplan.hazards.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wadeplan.hazards.limits.WadingProfile;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.Control;
import org.wadeplan.hazards.register.ControlLevel;
import org.wadeplan.hazards.register.HazardRegister;

class AssessorTest {

    private static final HazardRegister REGISTER = HazardRegister.shipped();
    private static final LocalDate DAY = LocalDate.of(2027, 9, 7);
    private static final Locale BEFORE = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(BEFORE);
    }

    @Test
    void oldIronUnderCurrentPutsMetalAndShockFirstWithPowerOff() {
        Assessment assessment = assess(ExampleVisits.tollowOldIron());
        assertThat(assessment.hazards()).extracting(AssessedHazard::id).startsWith("E01", "E04");
        assertThat(assessment.hazards().subList(0, 2)).allSatisfy(hazard -> {
            assertThat(hazard.canKill()).isTrue();
            assertThat(hazard.controls()).extracting(Control::text).anyMatch(text -> text.toLowerCase(Locale.ROOT)
                    .contains("power off"));
            assertThat(hazard.controls()).extracting(Control::level).isSorted();
        });
        assertThat(assessment.hazards().get(1).seen())
                .extracting(SiteHazard::sentence)
                .containsExactly("Sub-reach D: old fence wire and roof iron lie in the bed");
        assertThat(assessment.hazards().get(0).why()).contains("likelier here: metal in bed");
        assertThat(assessment.stop()).isFalse();
    }

    @Test
    void whatDoesNotApplyDoesNotAppear() {
        assertThat(assess(ExampleVisits.brannetNets()).hazards())
                .extracting(AssessedHazard::id)
                .contains("W10", "P03", "M04", "M01")
                .doesNotContain("E01", "E04", "W02", "P02", "W12", "C01", "C02", "B07");
    }

    @Test
    void theReasonNamesTheNumberFound() {
        assertThat(hazard(assess(ExampleVisits.brannetNets()), "W10").why())
                .containsExactly("wading", "water temperature 13.5 C, below 15 C");
    }

    @ParameterizedTest
    @CsvSource({"0.95, true, true", "0.61, true, false", "0.60, false, false"})
    void waterOverTheWadersLimitIsAStop(double depthVelocityM2S, boolean stop, boolean overTenSquareFeet) {
        Assessment assessment =
                assess(ExampleVisits.tollowOldIron().measured(Attribute.DEPTH_VELOCITY_M2S, depthVelocityM2S));
        assertThat(assessment.stop()).isEqualTo(stop);
        assertThat(assessment.breaches())
                .extracting(StopLimit::what)
                .isEqualTo(stop ? List.of("Stay out at depth x speed over 0.6 m2/s (standard adult).") : List.of());
        assertThat(depthVelocityM2S >= WadingProfile.NOBODY_M2S).isEqualTo(overTenSquareFeet);
    }

    @Test
    void theProductIsMadeFromDepthAndSpeedWhereItIsNotGiven() {
        Assessment assessment = assess(Exposure.at("X", DAY)
                .doing(Activity.WADING)
                .measured(Attribute.DEPTH_M, 0.5)
                .measured(Attribute.VELOCITY_MS, 0.9)
                .waded(WadingTeam.of(WadingProfile.NEW)));
        assertThat(assessment.breaches()).singleElement().satisfies(breach -> {
            assertThat(breach.hazardId()).isEqualTo("WADING");
            assertThat(breach.planned()).hasValue(0.45);
            assertThat(breach.limit()).hasValue(0.4);
            assertThat(breach.unit()).isEqualTo("m2/s");
            assertThat(breach.source()).isNotBlank();
        });
    }

    @ParameterizedTest
    @CsvSource({
        "CREW_SIZE, 2, 1, E01",
        "CPR_HOLDERS, 2, 1, E01",
        "DEPTH_M, 0.8, 0.81, E01",
        "RAIN_24H_MM, 39.9, 40, W04",
        "RISE_CM_15MIN, 4.9, 5, W04",
        "WATER_TEMP_C, 5, 4.9, W10",
        "HEAT_INDEX_C, 39.3, 39.4, C01",
        "WIND_CHILL_C, -27.9, -28, C02",
        "DAY_H, 13, 13.1, T02",
        "LOAD_KG, 25, 25.1, M01",
        "VELOCITY_MS, 1.0, 1.1, M04",
        "WIND_KMH, 46.3, 46.4, M05",
        "GUST_KMH, 59.9, 60, C04",
        "MAT_COVER_PCT, 50, 50.1, B04"
    })
    void eachStopLimitHoldsAtItsEdgeAndIsBreachedJustOutside(
            Attribute attribute, double within, double outside, String hazardId) {
        Exposure everything = Exposure.at("X", DAY)
                .doing(Activity.values())
                .measured(Attribute.RAIN_24H_MM, 30)
                .measured(Attribute.WIND_KMH, 42)
                .measured(Attribute.WIND_CHILL_C, -12)
                .present("trees-overhead");
        assertThat(breached(everything.measured(attribute, within), hazardId, attribute))
                .isFalse();
        assertThat(breached(everything.measured(attribute, outside), hazardId, attribute))
                .isTrue();
    }

    @Test
    void theNumberedStopsOfTheRegisterAreAllInTheTableAbove() {
        assertThat(REGISTER.hazards().stream()
                        .flatMap(hazard -> hazard.stops().stream())
                        .filter(stop -> stop.limit().isPresent()))
                .hasSize(14);
    }

    @Test
    void anUnknownNumberCountsAsTheWorstAndSaysSo() {
        Assessment assessment = assess(Exposure.at("X", DAY).doing(Activity.WADING));
        assertThat(hazard(assessment, "W10").why()).containsExactly("wading", "not known: water temperature");
        assertThat(assessment.stopLimits())
                .filteredOn(limit -> limit.hazardId().equals("WADING"))
                .extracting(StopLimit::state)
                .containsOnly(StopState.NOT_KNOWN);
    }

    @Test
    void whatNobodyLookedForIsAskedAndNotAssumedAbsent() {
        Exposure exposure = Exposure.at("X", DAY).doing(Activity.WADING);
        assertThat(assess(exposure).notLookedFor()).contains("dam upstream");
        assertThat(assess(exposure.absent("dam-upstream")).notLookedFor()).doesNotContain("dam upstream");
        assertThat(assess(exposure.present("dam-upstream")).hazards())
                .extracting(AssessedHazard::id)
                .contains("W05");
    }

    @Test
    void whatWasSeenHereIsOneStepLikelierThanTheRegisterSays() {
        Exposure visit = Exposure.at("X", DAY);
        assertThat(hazard(assess(visit.present("dwelling-near")), "A02").inherent())
                .isEqualTo(new RiskScore(2, 3));
        assertThat(hazard(assess(visit.noted(SiteHazard.of("A02", "two loose dogs"))), "A02")
                        .inherent())
                .isEqualTo(new RiskScore(3, 3));
    }

    @Test
    void breachedLimitsStandFirst() {
        Assessment assessment = assess(ExampleVisits.tollowOldIron().measured(Attribute.WATER_TEMP_C, 4));
        assertThat(assessment.stopLimits().get(0).what()).isEqualTo("Stay out under 5 C.");
        assertThat(assessment.stopLimits().stream().skip(1)).noneMatch(StopLimit::breached);
    }

    @Test
    void newHazardsOfTheSiteComeBeforeWorseOnes() {
        Exposure exposure = ExampleVisits.tollowOldIron()
                .noted(SiteHazard.of("A01", "bull in the paddock until 07:15").asNew());
        assertThat(assess(exposure).hazards().get(0).id()).isEqualTo("A01");
    }

    @Test
    void aHazardWithoutARowOrARatingCountsAsTheWorstPlausible() {
        Assessment assessment =
                assess(ExampleVisits.tollowOldIron().noted(SiteHazard.freeText("Leaking drum on the bank")));
        AssessedHazard drum = hazard(assessment, "N01");
        assertThat(drum.inherent()).isEqualTo(new RiskScore(4, 5));
        assertThat(drum.why()).contains("not rated by anyone: the worst plausible counts");
    }

    @Test
    void aPersonsRatingNeverMakesTheConsequenceSmaller() {
        SiteHazard belittled = new SiteHazard(
                Optional.of("E04"), "iron", Optional.empty(), false, Optional.of(new RiskScore(1, 1)), List.of());
        AssessedHazard metal = hazard(
                assess(ExampleVisits.brannetNets()
                        .doing(Activity.ELECTRIC_CURRENT)
                        .noted(belittled)),
                "E04");
        assertThat(metal.inherent()).isEqualTo(new RiskScore(1, 5));
        assertThat(metal.canKill()).isTrue();
    }

    @Test
    void aRowThatTheRegisterLacksIsKeptAsAFreeHazard() {
        Assessment assessment = assess(ExampleVisits.tollowOldIron().noted(SiteHazard.of("Z9", "Odd thing")));
        assertThat(hazard(assessment, "N01").why()).contains("the register has no row Z9");
    }

    @Test
    void ironInTheBedWithoutCurrentIsSetAsideWithTheReason() {
        Assessment assessment = assess(ExampleVisits.brannetNets().noted(SiteHazard.of("E04", "roof iron in the bed")));
        assertThat(assessment.setAside())
                .containsExactly(
                        new SetAside(
                                "E04",
                                "Metal in the bed with live current: noted here (roof iron in the bed), but nobody does that on this visit"));
    }

    @Test
    void onlyWhatIsSaidToBeInPlaceLowersTheResidual() {
        Exposure exposure = ExampleVisits.tollowOldIron();
        AssessedHazard bare = hazard(assess(exposure), "W02");
        AssessedHazard covered = hazard(assess(exposure.controlled("W02", ControlLevel.ENGINEER)), "W02");
        assertThat(bare.residual()).isEqualTo(bare.inherent()).isEqualTo(new RiskScore(3, 5));
        assertThat(covered.residual()).isEqualTo(new RiskScore(1, 5));
        assertThat(bare.leansOnPeople()).isTrue();
        assertThat(covered.leansOnPeople()).isFalse();
    }

    @Test
    void anEliminatedHazardLeavesTheListAndItsCapsOnWadingStay() {
        Assessment assessment = assess(ExampleVisits.tollowOldIron().controlled("W02", ControlLevel.ELIMINATE));
        assertThat(assessment.hazards()).extracting(AssessedHazard::id).doesNotContain("W02");
        assertThat(assessment.setAside()).extracting(SetAside::hazardId).containsExactly("W02");
        assertThat(assessment.stopLimits()).extracting(StopLimit::hazardId).contains("WADING");
    }

    @Test
    void theCatchmentAboveGivesAWarningOfRisingWater() {
        Exposure visit = ExampleVisits.tollowOldIron();
        assertThat(assess(visit).rise().orElseThrow().withinMin()).isEmpty();
        // Kirpich for 5 km at 0.02 is 61.99 min; half, down to 5 min, is 30 (worked by hand)
        assertThat(assess(visit.measured(Attribute.FLOW_LENGTH_KM, 5).measured(Attribute.FLOW_SLOPE, 0.02))
                        .rise()
                        .orElseThrow()
                        .withinMin())
                .hasValue(30);
        assertThat(assess(Exposure.at("BANK", DAY)).rise()).isEmpty();
    }

    @Test
    void summerHasNoWindChillAndMildAirNoHeat() {
        Conditions mild = Conditions.unknown().with(Attribute.AIR_TEMP_C, 12);
        assertThat(mild.reading(Attribute.WIND_CHILL_C)).isEqualTo(new Reading.DoesNotArise("air over 10 C"));
        assertThat(mild.reading(Attribute.HEAT_INDEX_C)).isEqualTo(new Reading.DoesNotArise("air under 15 C"));
    }

    @Test
    void unknownHumidityCountsAsTheMoistestAir() {
        Conditions hot = Conditions.unknown().with(Attribute.AIR_TEMP_C, 28);
        Reading moist = hot.with(Attribute.HUMIDITY_PCT, 100).reading(Attribute.HEAT_INDEX_C);
        assertThat(hot.reading(Attribute.HEAT_INDEX_C).value()).isEqualTo(moist.value());
    }

    @Test
    void airTooHotForTheFormulaIsNotKnownAndSoCountsAsHeat() {
        Exposure furnace =
                Exposure.at("X", DAY).measured(Attribute.AIR_TEMP_C, 46).measured(Attribute.HUMIDITY_PCT, 30);
        assertThat(hazard(assess(furnace), "C01").why()).anyMatch(why -> why.startsWith("not known: Air temperature"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE", "tr-TR"})
    void theSameInputsGiveTheSameAssessmentInAnyLanguage(String language) {
        Assessment expected = assess(ExampleVisits.tollowOldIron());
        Locale.setDefault(Locale.forLanguageTag(language));
        assertThat(Assessor.assess(ExampleVisits.tollowOldIron(), HazardRegister.shipped()))
                .isEqualTo(expected);
    }

    @Test
    void theOrderIsTotalAndFreeOfTheOrderOfTheRegister() {
        Assessment expected = assess(ExampleVisits.tollowOldIron());
        List<org.wadeplan.hazards.register.Hazard> shuffled = new ArrayList<>(REGISTER.hazards());
        Collections.shuffle(shuffled, new Random(20270907));
        HazardRegister other = new HazardRegister(REGISTER.version(), REGISTER.title(), REGISTER.source(), shuffled);
        assertThat(Assessor.assess(ExampleVisits.tollowOldIron(), other).hazards())
                .isEqualTo(expected.hazards());
        assertThat(expected.hazards())
                .isSortedAccordingTo(AssessedHazard.FIRST_TO_SAY)
                .doesNotHaveDuplicates();
    }

    private static boolean breached(Exposure exposure, String hazardId, Attribute attribute) {
        return assess(exposure).breaches().stream()
                .anyMatch(limit ->
                        limit.hazardId().equals(hazardId) && limit.measure().equals(Optional.of(attribute.words())));
    }

    private static Assessment assess(Exposure exposure) {
        return Assessor.assess(exposure, REGISTER);
    }

    private static AssessedHazard hazard(Assessment assessment, String id) {
        return assessment.hazards().stream()
                .filter(hazard -> hazard.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
