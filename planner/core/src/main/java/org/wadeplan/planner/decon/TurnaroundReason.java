package org.wadeplan.planner.decon;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

/** Says why a turnaround is what it is, in sentences for a sheet. */
final class TurnaroundReason {

    private final EvidenceTable evidence;

    TurnaroundReason(Biosecurity biosecurity) {
        this.evidence = new EvidenceTable(biosecurity.treatments());
    }

    String against(KitSet kitSet, PestsAtWater pests, boolean intoProtected, TreatmentChoice.Choice chosen) {
        StringBuilder words = new StringBuilder();
        if (!pests.counted().isEmpty()) {
            words.append("Against ").append(Words.list(pests.words())).append(". ");
        }
        if (intoProtected && !pests.notRecorded().isEmpty()) {
            words.append("Into a protected water, so pests that nobody looked for count too: ")
                    .append(Words.list(pests.notRecorded()))
                    .append(". ");
        }
        words.append(chosenWords(chosen));
        if (!intoProtected && !pests.notRecorded().isEmpty()) {
            words.append(" Not on record there, and not all covered by this: ")
                    .append(Words.list(pests.notRecorded()))
                    .append('.');
        }
        refusals(kitSet, chosen).forEach(refusal -> words.append(' ').append(refusal));
        return words.toString();
    }

    static String generic(PestsAtWater pests, GenericClean.Generic best) {
        String state = pests.notRecorded().isEmpty()
                ? "No pest counts at " + Words.list(pests.waters()) + "."
                : "No pest is on record at " + Words.list(pests.waters()) + "; unknown counts as suspected.";
        return state + " Generic clean: " + applied(best.treatment())
                + ", the soak with evidence against the most pests on every material of the set ("
                + Words.list(best.pests()) + "), the quickest among equals.";
    }

    private static String chosenWords(TreatmentChoice.Choice chosen) {
        if (!chosen.uncovered().isEmpty()) {
            return "Refused: nothing in the table covers " + uncovered(chosen.uncovered()) + ".";
        }
        List<String> treatments =
                chosen.treatments().stream().map(TurnaroundReason::applied).toList();
        return "Chosen: " + Words.list(treatments)
                + (chosen.provenCheapest()
                        ? ", the soonest released of all that cover every pest on every material, known pests by the best"
                                + " evidence there is."
                        : ", the best found before the search was cut short.");
    }

    private static String uncovered(List<Turnaround.Uncovered> pairs) {
        return Words.list(pairs.stream()
                .map(pair -> pair.pest() + " on " + Words.lower(pair.material()) + " items")
                .toList());
    }

    private static String applied(AppliedTreatment treatment) {
        String contact = treatment.wholeContactMin() > 0 ? " " + treatment.wholeContactMin() + " min" : "";
        String drying = treatment.dryingH() > 0 ? " then dry " + Words.number(treatment.dryingH()) + " h" : "";
        return treatment.recipe().words() + contact + drying;
    }

    /** Treatments that the table blocks for a pair at hand, so that nobody takes the short way. */
    private Set<String> refusals(KitSet kitSet, TreatmentChoice.Choice chosen) {
        Set<String> refusals = new LinkedHashSet<>();
        for (Turnaround.Cover cover : chosen.covers()) {
            for (Material material : kitSet.materials().stream().sorted().toList()) {
                for (Treatment row : evidence.refusals(new PestOnMaterial(cover.pest(), material))) {
                    refusals.add(Recipe.of(row).words() + " is refused for " + row.pest()
                            + ": tested and not effective (" + row.source() + ").");
                }
            }
        }
        return refusals;
    }
}
