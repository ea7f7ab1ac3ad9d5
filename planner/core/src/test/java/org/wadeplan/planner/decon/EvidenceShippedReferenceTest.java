package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.ShippedTables;
import org.wadeplan.planner.files.ShippedTables.ShippedPest;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.round.Validity;

/** The evidence that comes with the program, row by row, and figures of it against what was published. */
class EvidenceShippedReferenceTest {

    private static final List<Treatment> ROWS = ShippedTables.evidence();

    static List<Treatment> rows() {
        return ROWS;
    }

    static List<Map<String, String>> figures() {
        return ReferenceRows.of("evidence-figures.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyRowHasItsSourceAndTheBasisOfItsStrength(Treatment row) {
        assertThat(row.source()).isNotBlank();
        assertThat(row.strength().isPresent()).isEqualTo(row.strengthBasis().isPresent());
        assertThat(row.agent()).isNotBlank();
        if (row.source().contains("from memory")) {
            assertThat(row.source()).containsPattern("from memory, confidence (high|medium|low)");
        }
    }

    @ParameterizedTest
    @MethodSource("figures")
    void saysWhatWasPublished(Map<String, String> figure) {
        Treatment row = ROWS.stream()
                .filter(one ->
                        one.id().equals(figure.get("treatment")) && one.pest().equals(figure.get("pest")))
                .filter(one -> one.stage().orElse("").equals(figure.get("stage")))
                .filter(one -> lower(one.material()).equals(figure.get("material"))
                        && lower(one.mode()).equals(figure.get("mode")))
                .findFirst()
                .orElseThrow();
        assertThat(row.strength()).isEqualTo(number(figure, "strength"));
        assertThat(row.tempC()).isEqualTo(number(figure, "temp_c"));
        assertThat(row.contactMin()).isEqualTo(ReferenceRows.number(figure, "contact_min"));
        assertThat(row.dryingH()).isEqualTo(ReferenceRows.number(figure, "drying_h"));
        assertThat(row.grade()).isEqualTo(EvidenceGrade.valueOf(ReferenceRows.text(figure, "grade")));
    }

    private static OptionalDouble number(Map<String, String> figure, String column) {
        String text = ReferenceRows.text(figure, column);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    @Test
    void theListOfPestsAndTheEvidenceNameTheSamePestsAndStages() {
        Map<String, TreeSet<String>> inRows = new TreeMap<>();
        ROWS.forEach(row -> {
            TreeSet<String> stages = inRows.computeIfAbsent(row.pest(), pest -> new TreeSet<>());
            row.stage().ifPresent(stages::add);
        });
        Map<String, TreeSet<String>> listed = new TreeMap<>();
        for (ShippedPest pest : ShippedTables.pests()) {
            listed.put(pest.id(), new TreeSet<>(pest.stages()));
        }
        assertThat(inRows).isEqualTo(listed);
    }

    /** Trials were made on the organism itself; what an absorbent item adds is an own estimate, or the source says so. */
    @Test
    void anAbsorbentItemIsNeverCreditedBetterOrSoonerThanAHardOne() {
        for (Treatment row : ROWS) {
            if (row.material() == Material.ABSORBENT && row.grade() != EvidenceGrade.X) {
                Treatment hard = ROWS.stream()
                        .filter(one -> one.material() == Material.HARD
                                && one.id().equals(row.id())
                                && one.pest().equals(row.pest())
                                && one.stage().equals(row.stage())
                                && one.mode() == row.mode())
                        .findFirst()
                        .orElseThrow();
                assertThat(row.contactMin()).isGreaterThanOrEqualTo(hard.contactMin());
                assertThat(row.grade()).isGreaterThanOrEqualTo(hard.grade());
            }
        }
    }

    private static Biosecurity round(Optional<String> place, String... pests) {
        List<String> ids = List.of(pests);
        List<Treatment> rows =
                ROWS.stream().filter(row -> ids.contains(row.pest())).toList();
        return new Biosecurity(
                ids.stream().map(id -> new Pest(id, id, 4, Optional.empty())).toList(),
                List.of(),
                rows,
                List.of(),
                List.of(),
                List.of(),
                ShippedTables.rules(),
                place);
    }

    private static List<String> against(String pest, Optional<String> place, String day) {
        EvidenceTable table = new EvidenceTable(round(place, pest), LocalDate.parse(day));
        PestOnItem pair = new PestOnItem(pest, Optional.empty(), ItemKind.anythingOf(Material.HARD));
        return table.supporting(pair).stream()
                .map(row -> row.recipe().treatment())
                .toList();
    }

    /** NZ Ministry for Primary Industries and Fish & Game NZ: 10 % for 10 min since October 2021; the old leaflets end. */
    @Test
    void theAdviceOnDetergentChangesWithTheFirstOfOctober2021() {
        for (Optional<String> place : List.of(Optional.of("NZ"), Optional.<String>empty())) {
            assertThat(against("didymosphenia-geminata", place, "2021-09-30"))
                    .contains("detergent-5pc")
                    .doesNotContain("detergent-10pc");
            assertThat(against("didymosphenia-geminata", place, "2021-10-01"))
                    .contains("detergent-10pc")
                    .doesNotContain("detergent-5pc");
        }
    }

    /** Dwyer, Kerans & Gangloff, and Branstrator et al. 2013: chlorine fails, so household bleach is refused by name. */
    @Test
    void householdBleachIsRefusedAgainstTheMudSnailAndRestingEggs() {
        for (String pest : List.of("potamopyrgus-antipodarum", "bythotrephes-longimanus")) {
            assertThat(ROWS)
                    .filteredOn(row -> row.pest().equals(pest) && row.id().equals("bleach-10pc"))
                    .isNotEmpty()
                    .allMatch(row -> row.grade() == EvidenceGrade.X);
        }
    }

    @Test
    void saysWhenAnInstructionWasSupersededAndWhereAnotherHolds() {
        EvidenceTable table =
                new EvidenceTable(round(Optional.of("NZ"), "didymosphenia-geminata"), LocalDate.of(2027, 9, 6));
        String why = table.whyNothing(
                new PestOnItem(
                        "didymosphenia-geminata",
                        Optional.empty(),
                        new ItemKind(
                                Material.HARD,
                                Optional.of(Rows.gear("meter", Material.HARD, 20, java.util.Set.of())),
                                List.of("meter"))),
                false);
        assertThat(why)
                .startsWith("meter: ")
                .contains("detergent-5pc (soak): superseded on 2021-10-01")
                .contains("hot-60 (soak): it bears 20 °C at most, and this is 60 °C");
    }

    /** Whirling disease needs both spores dead: chlorine at 130 mg/L does for one of them only. */
    @Test
    void bothSporesOfWhirlingDiseaseMustBeCovered() {
        Biosecurity round = round(Optional.empty(), "myxobolus-cerebralis");
        TreatmentChoice.Choice choice = new TreatmentChoice(round, Rows.FIRST_DAY)
                .choose(List.of(Material.HARD), List.of("myxobolus-cerebralis"));
        assertThat(choice.covers())
                .extracting(cover -> cover.stage().orElse(""))
                .containsExactly("actinospore", "myxospore");
        assertThat(choice.uncovered()).isEmpty();
    }

    /** Five pests of waters at once: one hot bath does for most, and nothing is invented for the waterweed. */
    @Test
    void coversWhatItHasAndInventsNothing() {
        Biosecurity round = round(Optional.empty(), "dikerogammarus-villosus", "elodea-canadensis");
        TreatmentChoice.Choice choice = new TreatmentChoice(round, Rows.FIRST_DAY)
                .choose(List.of(Material.HARD), List.of("dikerogammarus-villosus", "elodea-canadensis"));
        assertThat(choice.uncovered()).extracting(Turnaround.Uncovered::pest).containsExactly("elodea-canadensis");
        assertThat(choice.uncovered().get(0).why()).contains("tested and not effective (Crane et al.");
    }

    @Test
    void rulesAndGearNameTheirSources() {
        assertThat(ShippedTables.rules()).isNotEmpty().allSatisfy(rule -> {
            assertThat(rule.source()).isNotBlank();
            assertThat(rule.validity()).isNotEqualTo(Validity.ALWAYS);
        });
        assertThat(ShippedTables.gearClasses()).isNotEmpty().allSatisfy(gear -> assertThat(gear.source())
                .isNotBlank());
        assertThat(ROWS.stream().filter(row -> row.mode() == TreatmentMode.SPRAY))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.grade() == EvidenceGrade.X || row.material() == Material.HARD)
                        .isTrue());
    }
}
