package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.decon.Rows.FIRST_DAY;
import static org.wadeplan.planner.round.WaterPest.PestStatus.FREE;
import static org.wadeplan.planner.round.WaterPest.PestStatus.KNOWN;
import static org.wadeplan.planner.round.WaterPest.PestStatus.SUSPECTED;
import static org.wadeplan.planner.round.WaterPest.PestStatus.UNKNOWN;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.WaterPest;

class PestsAtWaterTest {

    private static PestsAtWater at(List<String> waters, WaterPest... rows) {
        List<Pest> pests = Stream.of("P", "Q", "R", "S")
                .map(id -> new Pest(id, id, 3, Optional.empty()))
                .toList();
        return PestsAtWater.of(
                new Biosecurity(pests, List.of(rows), List.of(), List.of(), List.of()), FIRST_DAY, waters);
    }

    @Test
    void countsKnownSuspectedAndUnknownAlike() {
        PestsAtWater pests = at(
                List.of("W"),
                Rows.at("W", "P", KNOWN, "2020-01-01"),
                Rows.at("W", "Q", SUSPECTED, "2027-01-01"),
                Rows.at("W", "R", UNKNOWN, "2027-01-01"),
                Rows.at("V", "S", KNOWN, "2027-01-01"));
        assertThat(pests.words()).containsExactly("P (known at W)", "Q (suspected at W)", "R (unknown at W)");
        assertThat(pests.known()).containsExactly("P");
        assertThat(pests.notRecorded()).containsExactly("S");
    }

    /** Our own default: free decays to unknown after twelve months. */
    @Test
    void letsFreeAgeToUnknownAfterTwelveMonthsAndSaysSo() {
        PestsAtWater pests =
                at(List.of("W"), Rows.at("W", "P", FREE, "2026-09-06"), Rows.at("W", "Q", FREE, "2026-09-05"));
        assertThat(pests.free()).containsExactly("P");
        assertThat(pests.words())
                .containsExactly("Q (free at W on 2026-09-05, more than 12 months before the round, so unknown)");
    }

    @Test
    void aLookThatLiesAfterTheRoundBeginsFreesNothing() {
        PestsAtWater pests = at(List.of("W"), Rows.at("W", "P", FREE, "2099-01-01"));
        assertThat(pests.free()).isEmpty();
        assertThat(pests.words())
                .containsExactly("P (not known at W: its row says free on 2099-01-01, after the round begins)");
    }

    @Test
    void neverHidesAFindBehindALookThatFoundNothing() {
        assertThat(at(List.of("W"), Rows.at("W", "P", KNOWN, "2024-01-01"), Rows.at("W", "P", FREE, "2027-08-01"))
                        .toCover())
                .containsExactly("P");
    }

    @Test
    void takesTheLatestOfSeveralLooks() {
        assertThat(at(List.of("W"), Rows.at("W", "P", FREE, "2020-01-01"), Rows.at("W", "P", FREE, "2027-08-01"))
                        .toCover())
                .isEmpty();
    }

    @Test
    void addsUpTheWatersAndAddsWhatNobodyLookedForBeforeAProtectedWater() {
        PestsAtWater pests = at(
                List.of("V", "W"),
                Rows.at("V", "P", KNOWN, "2027-01-01"),
                Rows.at("W", "P", FREE, "2027-08-01"),
                Rows.at("V", "Q", FREE, "2027-08-01"),
                Rows.at("W", "Q", FREE, "2027-08-01"),
                Rows.at("V", "R", FREE, "2027-08-01"));
        assertThat(pests.toCover()).containsExactly("P");
        assertThat(pests.free()).containsExactly("Q");
        assertThat(pests.toCoverIntoProtected()).containsExactly("P", "R", "S");
    }
}
