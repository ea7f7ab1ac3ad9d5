package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * Picks the cheapest set of treatments that covers every pest, in every stage that the table tells apart, on every item with
 * a row of grade A, B or C that is in force and that the item bears.
 *
 * <p>Exact: see {@link CoverSearch}. A treatment used for several pairs is applied once, with the longest contact among them.
 * Agents that must never meet are never chosen together.
 */
public final class TreatmentChoice {

    private final EvidenceTable evidence;
    private final StepSequence sequence;
    private final CleanPrice price;
    private final ChemicalCautions cautions;

    /** @param day the day on which rows and rules must be in force */
    public TreatmentChoice(Biosecurity biosecurity, LocalDate day) {
        this.evidence = new EvidenceTable(biosecurity, day);
        this.sequence = new StepSequence(biosecurity);
        this.price = new CleanPrice(biosecurity);
        this.cautions = ChemicalCautions.shipped();
    }

    /**
     * What was chosen.
     *
     * @param treatments in the order of {@link Recipe#ORDER}
     * @param steps the whole clean, in order
     * @param covers for each covered pest and material the evidence that covers it, one for each stage and treatment
     * @param uncovered one for each pair that nothing covers, with why each candidate failed
     */
    public record Choice(
            List<AppliedTreatment> treatments,
            List<DeconStep> steps,
            List<Turnaround.Cover> covers,
            List<Turnaround.Uncovered> uncovered) {}

    /** The cheapest treatments for these pests on anything of these materials, by evidence of any grade but X. */
    public Choice choose(Collection<Material> materials, Collection<String> pests) {
        return choose(ItemKind.anythingOf(materials), pests, Demand.NONE);
    }

    /** The same with only the best graded rows against some pests. */
    public Choice choose(Collection<Material> materials, Collection<String> pests, Collection<String> bestGradeFor) {
        Demand demand = new Demand(new TreeSet<>(bestGradeFor), new TreeSet<>(), DryingRules.NONE);
        return choose(ItemKind.anythingOf(materials), pests, demand);
    }

    Choice choose(List<ItemKind> kinds, Collection<String> pests, Demand demand) {
        List<PestOnItem> open = new ArrayList<>();
        List<List<Evidence>> options = new ArrayList<>();
        List<Turnaround.Uncovered> uncovered = new ArrayList<>();
        for (PestOnItem pair : PestOnItem.all(pests, kinds, evidence)) {
            List<Evidence> rows = rows(pair, demand);
            if (rows.isEmpty()) {
                String why = evidence.whyNothing(pair, demand.soakFor().contains(pair.pest()));
                uncovered.add(new Turnaround.Uncovered(pair.pest(), pair.material(), why));
            } else {
                open.add(pair);
                options.add(rows);
            }
        }
        return new CoverSearch(options, sequence, cautions, price)
                .cheapest()
                .map(best -> chosen(best, kinds, covers(open, options, best), uncovered))
                .orElseGet(() -> clash(open, uncovered));
    }

    private List<Evidence> rows(PestOnItem pair, Demand demand) {
        List<Evidence> rows = evidence.supporting(pair).stream()
                .filter(row -> row.recipe().mode() != TreatmentMode.SPRAY
                        || !demand.soakFor().contains(pair.pest()))
                .map(demand.drying()::applied)
                .toList();
        return demand.bestGradeFor().contains(pair.pest()) ? EvidenceTable.bestGraded(rows) : rows;
    }

    private Choice chosen(
            CoverSearch.Found best,
            List<ItemKind> kinds,
            List<Turnaround.Cover> covers,
            List<Turnaround.Uncovered> uncovered) {
        List<AppliedTreatment> treatments = keptOff(best.treatments(), kinds);
        List<Turnaround.Cover> whole = covers.stream()
                .filter(cover -> uncovered.stream()
                        .noneMatch(gap -> gap.pest().equals(cover.pest()) && gap.material() == cover.material()))
                .toList();
        return new Choice(treatments, sequence.around(treatments), whole, List.copyOf(uncovered));
    }

    /** The treatments with the items that each would harm. */
    static List<AppliedTreatment> keptOff(List<AppliedTreatment> treatments, List<ItemKind> kinds) {
        return treatments.stream()
                .map(treatment -> treatment.keptOff(kinds.stream()
                        .filter(kind -> kind.gear()
                                .flatMap(gear -> GearLimits.bars(gear, treatment.recipe()))
                                .isPresent())
                        .flatMap(kind -> kind.kinds().stream())
                        .distinct()
                        .toList()))
                .toList();
    }

    private static List<Turnaround.Cover> covers(
            List<PestOnItem> pairs, List<List<Evidence>> options, CoverSearch.Found best) {
        List<Turnaround.Cover> covers = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            covers.add(cover(pairs.get(i), options.get(i), best.treatments()));
        }
        return merged(covers);
    }

    /** Of the rows that the chosen treatments satisfy, the best graded one. */
    private static Turnaround.Cover cover(PestOnItem pair, List<Evidence> rows, List<AppliedTreatment> treatments) {
        Evidence best = rows.stream()
                .filter(row -> treatments.stream().anyMatch(treatment -> treatment.does(row)))
                .min(Comparator.comparing(Evidence::grade)
                        .thenComparing(row -> row.recipe().words()))
                .orElseThrow();
        return new Turnaround.Cover(
                pair.pest(), pair.material(), best.recipe().treatment(), best.grade(), best.source(), pair.stage());
    }

    /** Kinds of items that one row covers for one pest and material are one cover. */
    private static List<Turnaround.Cover> merged(List<Turnaround.Cover> covers) {
        Map<Turnaround.Cover, Turnaround.Cover> distinct = new LinkedHashMap<>();
        covers.forEach(cover -> distinct.putIfAbsent(cover, cover));
        return List.copyOf(distinct.values());
    }

    /** The rows that one treatment satisfies, for pests that it covers on every one of the kinds. */
    List<Turnaround.Cover> coversBy(AppliedTreatment treatment, List<ItemKind> kinds, Collection<String> pests) {
        List<Turnaround.Cover> covers = new ArrayList<>();
        for (PestOnItem pair : PestOnItem.all(pests, kinds, evidence)) {
            evidence.support(treatment.recipe(), pair)
                    .ifPresent(row -> covers.add(cover(pair, List.of(row), List.of(treatment))));
        }
        return merged(covers);
    }

    private Choice clash(List<PestOnItem> open, List<Turnaround.Uncovered> uncovered) {
        List<Turnaround.Uncovered> all = new ArrayList<>(uncovered);
        String why = "every set of treatments for these pests brings together agents that must never meet";
        open.forEach(pair -> all.add(new Turnaround.Uncovered(pair.pest(), pair.material(), why)));
        return new Choice(List.of(), sequence.around(List.of()), List.of(), List.copyOf(all));
    }

    EvidenceTable evidence() {
        return evidence;
    }

    StepSequence sequence() {
        return sequence;
    }

    CleanPrice price() {
        return price;
    }

    /** Whether any pair of these pests and kinds has a row of that grade or better that counts. */
    Optional<Evidence> bestFor(PestOnItem pair, Demand demand) {
        return rows(pair, demand).stream().min(Comparator.comparing(Evidence::grade));
    }
}
