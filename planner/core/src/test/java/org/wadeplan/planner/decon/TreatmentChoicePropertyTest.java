package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** The choice against every combination of rows, on tables small enough to try them all. */
class TreatmentChoicePropertyTest {

    private static final Set<String> PESTS = new TreeSet<>(Set.of("P", "Q", "R"));

    /** Plain hard and absorbent items, and hard ones that bear no heat and no bleach. */
    private static final List<ItemKind> KINDS = List.of(
            ItemKind.anythingOf(Material.HARD),
            ItemKind.anythingOf(Material.ABSORBENT),
            new ItemKind(Material.HARD, Optional.of(tender()), List.of("probe")));

    private static GearClass tender() {
        return Rows.gear("tender", Material.HARD, 50, Set.of("bleach"));
    }

    @Provide
    Arbitrary<List<Treatment>> tables() {
        return rows().list().ofMinSize(1).ofMaxSize(14);
    }

    private static Arbitrary<Treatment> rows() {
        return Combinators.combine(
                        Arbitraries.of("hot", "warm", "oxidiser", "bleach", "dry", "freeze"),
                        Arbitraries.of(PESTS),
                        Arbitraries.of(Material.HARD, Material.ABSORBENT),
                        Arbitraries.integers().between(1, 60),
                        Arbitraries.of(EvidenceGrade.values()),
                        Arbitraries.of(true, false),
                        Arbitraries.of("", "", "", "egg", "adult"))
                .as(TreatmentChoicePropertyTest::row);
    }

    private static Treatment row(
            String id,
            String pest,
            Material material,
            int contactMin,
            EvidenceGrade grade,
            boolean pick,
            String stage) {
        Treatment row =
                switch (id) {
                    case "hot" -> Rows.hot(id, pest, material, 60, contactMin, grade);
                    case "warm" -> Rows.hot(id, pest, material, 45, contactMin, grade);
                    case "dry" -> Rows.dry(pest, material, contactMin);
                    case "freeze" -> Rows.freeze(pest, material, contactMin, grade);
                    case "bleach" ->
                        Rows.chemical(id, "household bleach", pest, material, TreatmentMode.SOAK, contactMin, grade);
                    default -> Rows.oxidiser(pest, material, TreatmentMode.SOAK, contactMin, grade);
                };
        return Rows.staged(pick ? Rows.picked(row) : row, stage);
    }

    private static TreatmentChoice.Choice choose(Biosecurity biosecurity) {
        return new TreatmentChoice(biosecurity, Rows.FIRST_DAY).choose(KINDS, PESTS, Demand.NONE);
    }

    @Property(seed = "20270906", tries = 1000)
    void costsWhatTheCheapestOfAllCombinationsCosts(@ForAll("tables") List<Treatment> table) {
        Biosecurity biosecurity = Rows.biosecurity(table);
        TreatmentChoice.Choice choice = choose(biosecurity);
        StepSequence sequence = new StepSequence(biosecurity);
        CleanPrice price = new CleanPrice(biosecurity);
        EvidenceTable evidence = new EvidenceTable(biosecurity, Rows.FIRST_DAY);
        List<List<Evidence>> options = new ArrayList<>();
        List<PestOnItem> pairs = PestOnItem.all(PESTS, KINDS, evidence);
        for (PestOnItem pair : pairs) {
            List<Evidence> rows = evidence.supporting(pair);
            if (!rows.isEmpty()) {
                options.add(rows);
            }
        }
        Optional<CleanCost> cheapest =
                new EveryCombination(options, sequence, price, TreatmentChoicePropertyTest::clash).cheapest();
        if (cheapest.isPresent()) {
            assertThat(price.of(choice.steps(), choice.treatments())).isEqualTo(cheapest.get());
            assertThat(choice.uncovered()).hasSize(pairs.size() - options.size());
        } else {
            assertThat(choice.treatments()).isEmpty();
            assertThat(choice.covers()).isEmpty();
        }
    }

    private static boolean clash(SortedMap<Recipe, AppliedTreatment> set) {
        return set.keySet().stream().anyMatch(one -> one.agent().contains("bleach"))
                && set.keySet().stream().anyMatch(one -> one.agent().equals("oxidiser"));
    }

    /** Each cover stands on a row of the table, and what was blocked for a pair never covers it. */
    @Property(seed = "20270906")
    void creditsNothingThatNoRowSupports(@ForAll("tables") List<Treatment> table) {
        for (Turnaround.Cover cover : choose(Rows.biosecurity(table)).covers()) {
            List<Treatment> about = table.stream()
                    .filter(row -> row.id().equals(cover.treatment())
                            && row.pest().equals(cover.pest())
                            && row.material() == cover.material()
                            && (row.stage().isEmpty() || row.stage().equals(cover.stage())))
                    .toList();
            assertThat(about).isNotEmpty().noneMatch(row -> row.grade() == EvidenceGrade.X);
            assertThat(about).anyMatch(row -> row.grade() == cover.grade());
        }
    }

    /** No pair becomes covered by losing a row, whatever stage it spoke of, as long as the list of pests names the stages. */
    @Property(seed = "20270906", tries = 300)
    void losingEvidenceNeverMakesALegCleaner(@ForAll("tables") List<Treatment> table) {
        for (Treatment row : table) {
            List<Treatment> fewer = new ArrayList<>(table);
            fewer.remove(row);
            if (row.grade() != EvidenceGrade.X) {
                assertThat(covered(withStages(table, table))).containsAll(covered(withStages(fewer, table)));
            }
        }
    }

    /** A table whose list of pests names every stage that another table tells apart. */
    private static Biosecurity withStages(List<Treatment> table, List<Treatment> named) {
        Biosecurity all = Rows.biosecurity(table);
        List<Pest> pests = all.pests().stream()
                .map(pest -> new Pest(pest.id(), pest.name(), pest.severity(), pest.note(), stages(named, pest.id())))
                .toList();
        return new Biosecurity(
                pests,
                all.waterPests(),
                all.treatments(),
                all.steps(),
                all.resources(),
                all.gear(),
                all.rules(),
                all.jurisdiction());
    }

    private static List<String> stages(List<Treatment> table, String pest) {
        return table.stream()
                .filter(row -> row.pest().equals(pest))
                .flatMap(row -> row.stage().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** A trial that found no effect takes credit away and never gives any. */
    @Property(seed = "20270906", tries = 300)
    void aRefusalNeverCreditsMore(@ForAll("tables") List<Treatment> table) {
        for (Treatment row : table) {
            List<Treatment> more = new ArrayList<>(table);
            more.add(Rows.refusing(row));
            assertThat(covered(table)).containsAll(covered(more));
        }
    }

    /** The pairs that some row supports, whether or not the agents of a whole set could meet. */
    private static Set<String> covered(List<Treatment> table) {
        return covered(Rows.biosecurity(table));
    }

    private static Set<String> covered(Biosecurity biosecurity) {
        TreatmentChoice choice = new TreatmentChoice(biosecurity, Rows.FIRST_DAY);
        Set<String> covered = new LinkedHashSet<>();
        for (String pest : PESTS) {
            for (ItemKind kind : KINDS) {
                TreatmentChoice.Choice one = choice.choose(List.of(kind), List.of(pest), Demand.NONE);
                if (one.uncovered().isEmpty()) {
                    covered.add(pest + " on " + kind.material() + kind.words());
                }
            }
        }
        return covered;
    }
}
