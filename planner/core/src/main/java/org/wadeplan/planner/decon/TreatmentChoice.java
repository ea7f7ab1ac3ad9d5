package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Material;

/**
 * Picks the cheapest set of treatments that covers every pest on every material with a row of grade A, B or C.
 *
 * <p>Exact: each pair may be covered by any recipe with a row for it, at the contact that its row asks for, and every such
 * combination is compared unless a part of it already costs more than the best whole. A treatment used for several pairs is
 * applied once, with the longest contact among them. Agents that must never meet are never chosen together.
 */
public final class TreatmentChoice {

    /** Beyond this many partial sets the search stops and says so; rounds of usual size need a few hundred. */
    static final int MOST_PARTIAL_SETS = 200_000;

    private final EvidenceTable evidence;
    private final StepSequence sequence;
    private final ChemicalCautions cautions;

    public TreatmentChoice(Biosecurity biosecurity) {
        this.evidence = new EvidenceTable(biosecurity.treatments());
        this.sequence = new StepSequence(biosecurity);
        this.cautions = ChemicalCautions.shipped();
    }

    /**
     * What was chosen.
     *
     * @param treatments in the order of {@link Recipe#ORDER}
     * @param steps the whole clean, in order
     * @param covers one for each covered pair
     * @param uncovered one for each pair that nothing covers, with why each candidate failed
     * @param provenCheapest false where the search was cut short
     */
    public record Choice(
            List<AppliedTreatment> treatments,
            List<DeconStep> steps,
            List<Turnaround.Cover> covers,
            List<Turnaround.Uncovered> uncovered,
            boolean provenCheapest) {}

    /** The cheapest treatments for these pests on these materials, by evidence of any grade but X. */
    public Choice choose(Collection<Material> materials, Collection<String> pests) {
        return choose(materials, pests, List.of());
    }

    /**
     * The cheapest treatments for these pests on these materials.
     *
     * @param bestGradeFor pests against which only the best graded rows count that the table has for a pair: a pest that is
     *     known to be there is not met with an agency's instruction where a tested treatment exists
     */
    public Choice choose(Collection<Material> materials, Collection<String> pests, Collection<String> bestGradeFor) {
        List<PestOnMaterial> pairs = PestOnMaterial.pairs(pests, materials);
        Map<Boolean, List<PestOnMaterial>> bySupport = pairs.stream()
                .collect(Collectors.partitioningBy(
                        pair -> !evidence.supporting(pair).isEmpty()));
        List<PestOnMaterial> open = bySupport.getOrDefault(true, List.of());
        List<Turnaround.Uncovered> uncovered = bySupport.getOrDefault(false, List.of()).stream()
                .map(pair -> new Turnaround.Uncovered(pair.pest(), pair.material(), evidence.whyNothing(pair)))
                .toList();
        List<List<Evidence>> options = open.stream()
                .map(pair -> bestGradeFor.contains(pair.pest()) ? evidence.bestGraded(pair) : evidence.supporting(pair))
                .toList();
        CoverSearch search = new CoverSearch(options, sequence, cautions, MOST_PARTIAL_SETS);
        Optional<CoverSearch.Found> found = search.cheapest();
        return found.map(best -> chosen(best, open, uncovered, search.complete()))
                .orElseGet(() -> clash(open, uncovered, search.complete()));
    }

    private Choice chosen(
            CoverSearch.Found best, List<PestOnMaterial> open, List<Turnaround.Uncovered> uncovered, boolean proven) {
        List<Turnaround.Cover> covers =
                open.stream().map(pair -> cover(pair, best.treatments())).toList();
        return new Choice(best.treatments(), best.steps(), covers, uncovered, proven);
    }

    /** Of the rows that the chosen treatments satisfy, the best graded one. */
    private Turnaround.Cover cover(PestOnMaterial pair, List<AppliedTreatment> treatments) {
        Map<String, Evidence> byGrade = new TreeMap<>();
        for (Evidence row : evidence.supporting(pair)) {
            if (treatments.stream().anyMatch(treatment -> treatment.does(row))) {
                byGrade.putIfAbsent(row.grade() + " " + row.recipe().words(), row);
            }
        }
        Evidence best = byGrade.values().iterator().next();
        return new Turnaround.Cover(
                pair.pest(), pair.material(), best.recipe().treatment(), best.grade(), best.source());
    }

    /** The rows that one treatment satisfies, for pests that it covers on every one of the materials. */
    List<Turnaround.Cover> coversBy(
            AppliedTreatment treatment, Collection<Material> materials, Collection<String> pests) {
        return PestOnMaterial.pairs(pests, materials).stream()
                .map(pair -> cover(pair, List.of(treatment)))
                .toList();
    }

    private Choice clash(List<PestOnMaterial> open, List<Turnaround.Uncovered> uncovered, boolean proven) {
        List<Turnaround.Uncovered> all = new ArrayList<>(uncovered);
        String why = proven
                ? "every set of treatments for these pests brings together agents that must never meet"
                : "the search was cut short before it found a set of treatments";
        open.forEach(pair -> all.add(new Turnaround.Uncovered(pair.pest(), pair.material(), why)));
        return new Choice(List.of(), sequence.around(List.of()), List.of(), List.copyOf(all), proven);
    }
}
