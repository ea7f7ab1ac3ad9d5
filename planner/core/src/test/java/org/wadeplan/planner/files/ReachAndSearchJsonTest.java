package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.geo.reach.LengthRule;
import org.wadeplan.geo.reach.ReachProtocol;
import org.wadeplan.geo.reach.SubReachRule;
import org.wadeplan.geo.reach.WidthCurve;
import org.wadeplan.geo.search.Bounds;
import org.wadeplan.geo.search.ClearBy;
import org.wadeplan.geo.search.SearchRules;
import org.wadeplan.planner.files.BrokenRound.Case;
import org.wadeplan.planner.round.ReachSettings;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.SearchSettings;

/** The keys {@code reach} and {@code search} of {@code round.json}. */
class ReachAndSearchJsonTest {

    private static final String OLD = "\"lengthM\": 150, \"subReachCount\": 10, ";

    @TempDir
    Path temp;

    private static BrokenRound reach(BrokenRound round, String keys) {
        return round.with("round.json", OLD, keys);
    }

    private static BrokenRound search(BrokenRound round, String keys) {
        return round.with(
                "round.json", "\"stakeUncertaintyM\": 5,", "\"stakeUncertaintyM\": 5, \"search\": {" + keys + "},");
    }

    private RoundHeader header(BrokenRound round) {
        return RoundReader.read(round.folder()).value().orElseThrow().header();
    }

    @Test
    void theOldFormStaysValid() {
        ReachSettings settings = header(BrokenRound.in(temp)).reach();

        assertThat(settings.protocol().length()).isEqualTo(new LengthRule.Fixed(150));
        assertThat(settings.protocol().subReaches()).isEqualTo(new SubReachRule.Equal(10));
        assertThat(settings.widthCurve()).isEmpty();
        assertThat(settings.driftLimitM()).isEqualTo(15);
    }

    @Test
    void readsARuleByWidthWithItsCurve() {
        ReachSettings settings = header(reach(
                        BrokenRound.in(temp),
                        "\"length\": {\"widths\": 20, \"floorM\": 150, \"capM\": 300, \"wideFromM\": 30, \"wideCapM\": 500},"
                                + " \"subReachLengthM\": 15, \"driftLimitM\": 20, \"widthCurve\": {\"coefficient\": 10.8,"
                                + " \"exponent\": 0.458, \"areaUnit\": \"mi2\", \"widthUnit\": \"ft\", \"areaFrom\":"
                                + " \"upstream-length\", \"km2PerUpstreamKm\": 0.8, \"source\": \"W. New York\"}, "))
                .reach();

        assertThat(settings)
                .isEqualTo(new ReachSettings(
                        new ReachProtocol(
                                new LengthRule.Widths(20, 150, 300, Optional.of(new LengthRule.WideCap(30, 500))),
                                new SubReachRule.OfLength(15),
                                settings.protocol().source()),
                        Optional.of(new WidthCurve(
                                10.8,
                                0.458,
                                WidthCurve.AreaUnit.MI2,
                                WidthCurve.WidthUnit.FT,
                                OptionalDouble.of(0.8),
                                "W. New York")),
                        20));
    }

    @Test
    void aRoundWithoutSearchSettingsGetsTheUsualOnes() {
        assertThat(header(BrokenRound.in(temp)).search().clearM("culvert")).isEqualTo(50);
    }

    @Test
    void readsDistancesLimitsAndWeights() {
        SearchSettings settings = header(search(
                        BrokenRound.in(temp),
                        "\"clearBy\": \"straight\", \"clearM\": {\"confluence\": 100, \"Weir\": 75}, \"layout\":"
                                + " \"end-to-end\", \"acrossLines\": false, \"minGapM\": 500, \"limits\": {\"orderMin\": 1,"
                                + " \"orderMax\": 3, \"slopeMaxPercent\": 4, \"walkInMaxM\": 800, \"walkInOnConsentedLand\":"
                                + " true, \"lineKindsRuledOut\": [\"Lake\"]}, \"withoutConsent\": [\"refused\", \"pending\"],"
                                + " \"tidalRuledOut\": false, \"weights\": {\"walkIn\": 0, \"source\": \"agency\"}, \"best\": 5,"
                                + " \"bestOfWater\": 2, \"source\": \"agency\""))
                .search();

        assertThat(settings.clearBy()).isEqualTo(ClearBy.STRAIGHT);
        assertThat(settings.clearM())
                .containsAllEntriesOf(Map.of("confluence", 100.0, "weir", 75.0, "other", 50.0, "parcel", 0.0));
        assertThat(settings.layout()).isEqualTo(new SearchRules.EndToEnd());
        assertThat(settings.acrossLines()).isFalse();
        assertThat(settings.limits().order()).isEqualTo(Bounds.between(1, 3));
        assertThat(settings.limits().slopePercent()).isEqualTo(Bounds.atMost(4));
        assertThat(settings.limits().walkInOnConsentedLand()).isTrue();
        assertThat(settings.limits().lineKindsRuledOut()).containsExactly("lake");
        assertThat(settings.withoutConsent()).isEqualTo(Set.of("refused", "pending"));
        assertThat(settings.tidalRuledOut()).isFalse();
        assertThat(settings.scores().walkIn().weight()).isZero();
        assertThat(settings.scores().clearance().weight()).isEqualTo(30);
        assertThat(settings.best()).isEqualTo(5);
        assertThat(settings.bestOfWater()).isEqualTo(OptionalInt.of(2));
    }

    static Stream<Case> faults() {
        return Stream.of(
                new Case(
                        round -> reach(round, OLD + "\"subReachLengthM\": 15, "),
                        "ERROR reach-two-rules round.json, reach.subReachLengthM: both subReachCount and subReachLengthM are given. Allowed: one of the two. Do: take one out"),
                new Case(
                        round -> reach(round, "\"lengthM\": 150, \"subReachLengthM\": 40, "),
                        "ERROR reach-pieces-uneven round.json, reach.subReachLengthM: a reach of 150.0 m is no whole number of sub-reaches of 40.0 m. Allowed: a length that divides the reach's. Do: change one of the two"),
                new Case(
                        round -> reach(round, "\"lengthM\": 405, \"subReachLengthM\": 15, "),
                        "ERROR reach-letters-run-out round.json, reach.subReachLengthM: 405 m fall into 27 sub-reaches of 15 m, and letters reach from A to Z: 1 to 26. Allowed: at most 26 sub-reaches, lettered A to Z. Do: make the sub-reaches longer"),
                new Case(
                        round -> reach(
                                round,
                                "\"length\": {\"widths\": 40, \"floorM\": 200, \"capM\": 150}, \"subReachCount\": 10, "),
                        "ERROR reach-cap-low round.json, reach.length.capM: a cap is below what it caps: floorM 200.0, capM 150.0. Allowed: floorM <= capM <= wideCapM. Do: check the three"),
                new Case(
                        round ->
                                search(round, "\"limits\": {\"orderMin\": 3, \"orderMax\": 1}, \"source\": \"agency\""),
                        "ERROR limit-order round.json, search.limits.orderMin: orderMin is above orderMax. Allowed: a least that is no more than the most. Do: check both; they may be swapped"),
                new Case(
                        round -> search(
                                round, "\"clearBy\": \"crow\", \"acrossLines\": \"yes\", \"source\": \"agency\""),
                        "ERROR json-type round.json, search.acrossLines: the value is a text, \"yes\". Allowed: true or false. Do: mend it",
                        "ERROR word-unknown round.json, search.clearBy: \"crow\" is not a word known here. Allowed: straight, along. Do: choose one of them"),
                new Case(
                        round -> search(round, "\"clearM\": {\"weir\": -5}, \"source\": \"agency\""),
                        "ERROR out-of-range round.json, search.clearM.weir: \"-5\" is too low. Allowed: a number from 0 to 100000 m. Do: check the value and its unit"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void eachFaultGivesItsSentenceAndNoOther(Case broken) {
        assertThat(broken.fault().apply(BrokenRound.in(temp)).sentences())
                .containsExactlyElementsOf(broken.sentences());
    }
}
