package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.decon.Rows.at;
import static org.wadeplan.planner.decon.Rows.dry;
import static org.wadeplan.planner.decon.Rows.hot;
import static org.wadeplan.planner.decon.Rows.rule;
import static org.wadeplan.planner.decon.Rows.valid;
import static org.wadeplan.planner.round.EvidenceGrade.A;
import static org.wadeplan.planner.round.EvidenceGrade.C;
import static org.wadeplan.planner.round.Material.HARD;
import static org.wadeplan.planner.round.WaterPest.PestStatus.FREE;
import static org.wadeplan.planner.round.WaterPest.PestStatus.KNOWN;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.DeconRule.Kind;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.Validity;

class RulesOfPlaceTest {

    private static final KitSet KIT = Rows.kitSet("K", Set.of(HARD));
    private static final Validity NZ =
            new Validity(Optional.of(LocalDate.of(2021, 10, 1)), Optional.empty(), Optional.of("NZ"));
    private static final Treatment DRY = dry("P", HARD, 24);
    private static final Treatment HOT = hot("hot", "P", HARD, 60, 10, A);

    private static Biosecurity place(String where, List<DeconRule> rules, Treatment... rows) {
        Biosecurity plain = Rows.biosecurity(List.of(rows), at("U", "P", KNOWN, "2027-01-01"));
        return Rows.with(plain, Optional.of(where), rules);
    }

    private static Turnaround needed(Biosecurity biosecurity, LocalDate day) {
        return new TransferRules(biosecurity, day, List.of()).needed(KIT, List.of("U"), "V");
    }

    private static DeconRule inMonths(DeconRule rule, int from, int until) {
        return new DeconRule(
                rule.id(),
                rule.kind(),
                rule.value(),
                rule.pests(),
                rule.waters(),
                OptionalInt.of(from),
                OptionalInt.of(until),
                rule.validity(),
                rule.text(),
                rule.treatment(),
                rule.source());
    }

    @ParameterizedTest
    @CsvSource({
        "2021-09-30, NZ, 1440",
        "2021-10-01, NZ, 2880",
        "2021-10-01, GB, 1440",
    })
    void dryingAloneGrowsToTheRulesHoursWhereItIsInForce(LocalDate day, String where, int dryMin) {
        Turnaround turnaround = needed(place(where, List.of(rule("dry-48", Kind.DRYING_ALONE_H, 48, NZ)), DRY), day);
        assertThat(turnaround.unattendedMin()).isEqualTo(dryMin);
        assertThat(turnaround
                        .reason()
                        .contains("By rule dry-48 (NZ, in force since 2021-10-01): text of dry-48."
                                + " Source: source of dry-48."))
                .isEqualTo(dryMin == 2880);
    }

    @Test
    void dryingAfterATreatmentIsAddedToIt() {
        Biosecurity biosecurity = place("NZ", List.of(rule("after-48", Kind.DRYING_AFTER_H, 48, NZ)), HOT);
        Turnaround turnaround = needed(biosecurity, Rows.FIRST_DAY);
        assertThat(turnaround.steps()).extracting(DeconStep::step).containsExactly("brush", "soak", "rinse", "dry");
        assertThat(turnaround.unattendedMin()).isEqualTo(2880);
        assertThat(turnaround.reason()).contains("rule after-48");
    }

    @Test
    void aRuleMakesDryingLongerAndIsNoEvidenceThatDryingWorks() {
        Treatment other = hot("hot", "Q", HARD, 60, 10, A);
        Biosecurity biosecurity = place("NZ", List.of(rule("dry-48", Kind.DRYING_ALONE_H, 48, NZ)), other);
        Biosecurity known = new Biosecurity(
                List.of(new org.wadeplan.planner.round.Pest("P", "P", 4, Optional.empty())),
                biosecurity.waterPests(),
                biosecurity.treatments(),
                biosecurity.steps(),
                biosecurity.resources(),
                List.of(),
                biosecurity.rules(),
                biosecurity.jurisdiction());
        assertThat(needed(known, Rows.FIRST_DAY).possible()).isFalse();
    }

    /** A US state rule as quoted in 2014: 7 d in June to August, 30 d in December to February. */
    @ParameterizedTest
    @CsvSource({"2027-06-01, 168", "2027-08-31, 168", "2027-12-01, 720", "2027-02-28, 720", "2027-09-06, 24"})
    void seasonsMayRunOverTheTurnOfTheYear(LocalDate day, int hours) {
        List<DeconRule> rules = List.of(
                inMonths(rule("summer", Kind.DRYING_ALONE_H, 168, Validity.ALWAYS), 6, 8),
                inMonths(rule("winter", Kind.DRYING_ALONE_H, 720, Validity.ALWAYS), 12, 2));
        assertThat(needed(place("US-UT", rules, DRY), day).unattendedMin()).isEqualTo(hours * 60);
    }

    @Test
    void freeHoldsAsLongAsARuleSays() {
        Biosecurity plain = Rows.biosecurity(List.of(HOT), at("U", "P", FREE, "2027-02-01"));
        assertThat(needed(plain, Rows.FIRST_DAY).reason()).contains("No pest counts at U");
        Biosecurity six = Rows.with(plain, Optional.of("NZ"), List.of(rule("free-6", Kind.FREE_HOLDS_MONTHS, 6, NZ)));
        assertThat(needed(six, Rows.FIRST_DAY).reason()).contains("more than 6 months before the round, so unknown");
    }

    @Test
    void aRowCountsOnlyInItsTimeAndPlace() {
        Treatment old = valid(hot("old", "P", HARD, 50, 1, C), "", "2021-09-30", "NZ");
        Treatment fresh = valid(hot("fresh", "P", HARD, 50, 10, C), "2021-10-01", "", "NZ");
        Biosecurity nz = place("NZ", List.of(), old, fresh);
        assertThat(needed(nz, LocalDate.of(2021, 9, 30)).covers().get(0).treatment())
                .isEqualTo("old");
        assertThat(needed(nz, LocalDate.of(2021, 10, 1)).covers().get(0).treatment())
                .isEqualTo("fresh");
        Turnaround elsewhere = needed(place("GB", List.of(), old, fresh), Rows.FIRST_DAY);
        assertThat(elsewhere.uncovered().get(0).why())
                .isEqualTo("fresh (soak): an instruction of NZ, and the round follows GB;"
                        + " old (soak): superseded on 2021-10-01");
    }

    @Test
    void aControlledAreaIsNamedAndAsksForTheFullClean() {
        Biosecurity plain = Rows.biosecurity(List.of(HOT), at("U", "P", FREE, "2027-02-01"));
        Biosecurity area = Rows.with(plain, Optional.of("NZ"), List.of(rule("area", Kind.CONTROLLED_AREA, -1, NZ)));
        assertThat(needed(plain, Rows.FIRST_DAY).tier()).hasValue(Tier.T1);
        assertThat(needed(area, Rows.FIRST_DAY).tier()).hasValue(Tier.T2);
        assertThat(needed(area, Rows.FIRST_DAY).reason()).contains("By rule area (NZ, in force since 2021-10-01)");
    }
}
