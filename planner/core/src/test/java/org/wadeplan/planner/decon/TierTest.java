package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.decon.Rows.at;
import static org.wadeplan.planner.decon.Rows.hot;
import static org.wadeplan.planner.decon.Rows.oxidiser;
import static org.wadeplan.planner.round.EvidenceGrade.A;
import static org.wadeplan.planner.round.EvidenceGrade.C;
import static org.wadeplan.planner.round.Material.HARD;
import static org.wadeplan.planner.round.TreatmentMode.SPRAY;
import static org.wadeplan.planner.round.WaterPest.PestStatus.FREE;
import static org.wadeplan.planner.round.WaterPest.PestStatus.KNOWN;
import static org.wadeplan.planner.round.WaterPest.PestStatus.SUSPECTED;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.WaterPest;
import org.wadeplan.planner.round.WaterPest.PestStatus;

class TierTest {

    /** Own scheme; a protected water always asks for the top tier, from a free source too. */
    @ParameterizedTest
    @CsvSource({
        "FREE, T0, T1, T3",
        "UNKNOWN, T1, T2, T3",
        "SUSPECTED, T1, T2, T3",
        "KNOWN, T1, T3, T3",
    })
    void followsFromSourceAndDestination(PestStatus source, Tier same, Tier other, Tier guarded) {
        assertThat(Tier.of(source, Tier.Way.SAME_WATER_DOWNSTREAM)).isEqualTo(same);
        assertThat(Tier.of(source, Tier.Way.ANOTHER_WATER)).isEqualTo(other);
        assertThat(Tier.of(source, Tier.Way.PROTECTED_OR_UP_A_BARRIER)).isEqualTo(guarded);
    }

    private static Turnaround needed(List<Treatment> rows, List<String> guarded, WaterPest... pests) {
        return new TransferRules(Rows.biosecurity(rows, pests), Rows.FIRST_DAY, guarded)
                .needed(Rows.kitSet("K", Set.of(HARD)), List.of("U"), "V");
    }

    @Test
    void theTopTierTakesNoSprayAndSaysWhatGradeThereIs() {
        List<Treatment> rows = List.of(oxidiser("P", HARD, SPRAY, 5, A), hot("hot", "P", HARD, 50, 30, C));
        Turnaround known = needed(rows, List.of(), at("U", "P", KNOWN, "2027-01-01"));
        assertThat(known.tier()).hasValue(Tier.T3);
        assertThat(known.covers()).extracting(Turnaround.Cover::treatment).containsExactly("hot");
        assertThat(known.reason())
                .contains("No row of grade A can be used on all of it against P: grade C is the best there is.")
                .contains("Tier T3, from a water with a known pest into another water: ")
                .contains("a second person checks and signs");
        Turnaround suspected = needed(rows, List.of(), at("U", "P", SUSPECTED, "2027-01-01"));
        assertThat(suspected.tier()).hasValue(Tier.T2);
        assertThat(suspected.covers()).extracting(Turnaround.Cover::treatment).containsExactly("oxidiser");
    }

    @Test
    void refusesWhereOnlyASprayIsKnownAndASoakIsAsked() {
        Turnaround known =
                needed(List.of(oxidiser("P", HARD, SPRAY, 5, A)), List.of(), at("U", "P", KNOWN, "2027-01-01"));
        assertThat(known.possible()).isFalse();
        assertThat(known.uncovered().get(0).why())
                .isEqualTo("oxidiser (spray): a spray, and a known pest or protected water asks for a soak");
    }

    @Test
    void aProtectedWaterAsksForTheTopTierFromAFreeSourceToo() {
        List<Treatment> rows = List.of(hot("hot", "P", HARD, 50, 30, A));
        assertThat(needed(rows, List.of("V"), at("U", "P", FREE, "2027-06-01")).tier())
                .hasValue(Tier.T3);
        assertThat(needed(rows, List.of(), at("U", "P", FREE, "2026-01-01")).tier())
                .as("aged to unknown")
                .hasValue(Tier.T2);
    }
}
