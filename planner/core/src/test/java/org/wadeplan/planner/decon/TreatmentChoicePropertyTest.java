package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** The choice against every combination of rows, on tables small enough to try them all. */
class TreatmentChoicePropertyTest {

    private static final Set<String> PESTS = Set.of("P", "Q", "R");
    private static final Set<Material> MATERIALS = Set.of(Material.HARD, Material.ABSORBENT);

    @Provide
    Arbitrary<List<Treatment>> tables() {
        return rows().list().ofMinSize(1).ofMaxSize(14);
    }

    private static Arbitrary<Treatment> rows() {
        Arbitrary<String> ids = Arbitraries.of("hot", "oxidiser", "bleach", "dry");
        return Combinators.combine(
                        ids,
                        Arbitraries.of(PESTS),
                        Arbitraries.of(MATERIALS),
                        Arbitraries.integers().between(1, 60),
                        Arbitraries.of(EvidenceGrade.values()),
                        Arbitraries.of(true, false))
                .as(TreatmentChoicePropertyTest::row);
    }

    private static Treatment row(
            String id, String pest, Material material, int contactMin, EvidenceGrade grade, boolean pick) {
        Treatment row =
                switch (id) {
                    case "hot" -> Rows.hot(id, pest, material, 60, contactMin, grade);
                    case "dry" -> Rows.dry(pest, material, contactMin);
                    case "bleach" ->
                        Rows.chemical(id, "household bleach", pest, material, TreatmentMode.SOAK, contactMin, grade);
                    default -> Rows.oxidiser(pest, material, TreatmentMode.SOAK, contactMin, grade);
                };
        return pick ? Rows.picked(row) : row;
    }

    @Property(seed = "20270906")
    void costsWhatTheCheapestOfAllCombinationsCosts(@ForAll("tables") List<Treatment> table) {
        Biosecurity biosecurity = Rows.biosecurity(table);
        TreatmentChoice.Choice choice = new TreatmentChoice(biosecurity).choose(MATERIALS, PESTS);
        StepSequence sequence = new StepSequence(biosecurity);
        List<List<Evidence>> options = options(biosecurity);
        Optional<CleanCost> cheapest = bruteForce(options, 0, new TreeMap<>(Recipe.ORDER), sequence);
        if (cheapest.isPresent()) {
            assertThat(sequence.cost(choice.steps(), choice.treatments().size()))
                    .isEqualTo(cheapest.get());
            assertThat(choice.uncovered()).hasSize(PESTS.size() * MATERIALS.size() - options.size());
            assertThat(choice.provenCheapest()).isTrue();
        } else {
            assertThat(choice.treatments()).isEmpty();
            assertThat(choice.covers()).isEmpty();
        }
    }

    private static List<List<Evidence>> options(Biosecurity biosecurity) {
        EvidenceTable evidence = new EvidenceTable(biosecurity.treatments());
        return PestOnMaterial.pairs(PESTS, MATERIALS).stream()
                .map(evidence::supporting)
                .filter(rows -> !rows.isEmpty())
                .toList();
    }

    /** Every way of giving each pair one of its rows, without bounds and without order. */
    private static Optional<CleanCost> bruteForce(
            List<List<Evidence>> options, int from, SortedMap<Recipe, AppliedTreatment> set, StepSequence sequence) {
        if (from == options.size()) {
            boolean clash = set.keySet().stream().anyMatch(one -> one.agent().contains("bleach"))
                    && set.keySet().stream().anyMatch(one -> one.agent().equals("oxidiser"));
            return clash
                    ? Optional.empty()
                    : Optional.of(sequence.cost(sequence.around(List.copyOf(set.values())), set.size()));
        }
        List<CleanCost> costs = new ArrayList<>();
        for (Evidence row : options.get(from)) {
            SortedMap<Recipe, AppliedTreatment> next = new TreeMap<>(set);
            next.merge(row.recipe(), AppliedTreatment.of(row), (held, fresh) -> held.raisedTo(row));
            bruteForce(options, from + 1, next, sequence).ifPresent(costs::add);
        }
        return costs.stream().min(CleanCost::compareTo);
    }

    /** Each cover stands on a row of the table, and what was blocked for a pair never covers it. */
    @Property(seed = "20270906")
    void creditsNothingThatNoRowSupports(@ForAll("tables") List<Treatment> table) {
        TreatmentChoice.Choice choice = new TreatmentChoice(Rows.biosecurity(table)).choose(MATERIALS, PESTS);
        for (Turnaround.Cover cover : choice.covers()) {
            List<Treatment> about = table.stream()
                    .filter(row -> row.id().equals(cover.treatment())
                            && row.pest().equals(cover.pest())
                            && row.material() == cover.material())
                    .toList();
            assertThat(about).isNotEmpty().noneMatch(row -> row.grade() == EvidenceGrade.X);
            assertThat(about).anyMatch(row -> row.grade() == cover.grade());
        }
    }

    /** A clean that the smaller table allows, the larger one allows too. */
    @Property(seed = "20270906")
    void losingEvidenceNeverMakesALegCleaner(@ForAll("tables") List<Treatment> table) {
        List<Treatment> supports =
                table.stream().filter(row -> row.grade() != EvidenceGrade.X).toList();
        List<Treatment> fewer = supports.isEmpty() ? supports : supports.subList(1, supports.size());
        if (possible(fewer)) {
            assertThat(possible(supports)).isTrue();
        }
    }

    private static boolean possible(List<Treatment> table) {
        return new TreatmentChoice(Rows.biosecurity(table))
                .choose(Set.of(Material.HARD), Set.of("P", "Q"))
                .uncovered()
                .isEmpty();
    }
}
