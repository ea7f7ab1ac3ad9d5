package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wadeplan.planner.decon.TransferRules.Leg;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Treatment;

/** Says why a turnaround is what it is, in sentences for a sheet. */
final class TurnaroundReason {

    private final EvidenceTable evidence;
    private final RulesOfPlace rules;

    TurnaroundReason(EvidenceTable evidence, RulesOfPlace rules) {
        this.evidence = evidence;
        this.rules = rules;
    }

    String against(Leg leg, Set<String> toCover, Set<String> strictFor, TreatmentChoice.Choice chosen) {
        PestsAtWater pests = leg.pests();
        List<String> words = new ArrayList<>();
        if (!pests.counted().isEmpty()) {
            words.add("Against " + Words.list(pests.words()) + ".");
        }
        if (leg.intoProtected() && !pests.notRecorded().isEmpty()) {
            words.add("Into a protected water, so pests that nobody looked for count too: "
                    + Words.list(pests.notRecorded()) + ".");
        }
        words.add(chosenWords(chosen));
        if (!leg.intoProtected() && !pests.notRecorded().isEmpty()) {
            words.add("Not on record there, and not all covered by this: " + Words.list(pests.notRecorded()) + ".");
        }
        words.addAll(refusals(leg, toCover));
        words.addAll(harmed(leg, toCover));
        words.addAll(lowerGrades(chosen, strictFor));
        words.addAll(ruleWords(leg, toCover, chosen.treatments()));
        words.add(tierWords(leg));
        return String.join(" ", words);
    }

    String generic(Leg leg, GenericClean.Generic best) {
        PestsAtWater pests = leg.pests();
        List<String> words = new ArrayList<>();
        words.add(
                pests.notRecorded().isEmpty()
                        ? "No pest counts at " + Words.list(pests.waters()) + "."
                        : "No pest is on record at " + Words.list(pests.waters()) + "; unknown counts as suspected.");
        words.add("Generic clean: " + applied(best.treatment())
                + ", the soak with evidence against the most pests on every material of the set ("
                + Words.list(best.pests()) + "), the quickest among equals.");
        words.addAll(ruleWords(leg, best.pests(), List.of(best.treatment())));
        words.add(tierWords(leg));
        return String.join(" ", words);
    }

    private static String chosenWords(TreatmentChoice.Choice chosen) {
        if (!chosen.uncovered().isEmpty()) {
            return "Refused: nothing in the table covers " + uncovered(chosen.uncovered()) + ".";
        }
        List<String> treatments =
                chosen.treatments().stream().map(TurnaroundReason::applied).toList();
        return "Chosen: " + Words.list(treatments)
                + ", the soonest released of all that cover every pest on every material, known pests by the best evidence"
                + " there is.";
    }

    private static String uncovered(List<Turnaround.Uncovered> pairs) {
        return Words.list(pairs.stream()
                .map(pair -> pair.pest() + " on " + Words.lower(pair.material()) + " items")
                .distinct()
                .toList());
    }

    static String applied(AppliedTreatment treatment) {
        String contact = treatment.wholeContactMin() > 0 ? " " + treatment.wholeContactMin() + " min" : "";
        String drying = treatment.dryingH() > 0 ? " then dry " + Words.number(treatment.dryingH()) + " h" : "";
        return treatment.recipe().words() + contact + drying;
    }

    /** Treatments that the table blocks for a pair at hand, so that nobody takes the short way. */
    private Set<String> refusals(Leg leg, Set<String> toCover) {
        Set<String> refusals = new LinkedHashSet<>();
        for (PestOnItem pair : PestOnItem.all(toCover, leg.items(), evidence)) {
            for (Treatment row : evidence.refusals(pair)) {
                refusals.add(Recipe.of(row).words() + " is refused for " + row.pest() + ": tested and not effective ("
                        + row.source() + ").");
            }
        }
        return refusals;
    }

    /** Treatments that would harm an item, and once which items nothing is known of where others have a gear class. */
    private Set<String> harmed(Leg leg, Set<String> toCover) {
        Set<String> words = new LinkedHashSet<>();
        for (PestOnItem pair : PestOnItem.all(toCover, leg.items(), evidence)) {
            evidence.barredWords(pair).forEach(word -> words.add(word + "."));
        }
        Set<String> unknown = new TreeSet<>();
        leg.items().stream().filter(kind -> kind.gear().isEmpty()).forEach(kind -> unknown.addAll(kind.kinds()));
        if (!unknown.isEmpty()) {
            words.add("What these bear is not on record: " + Words.list(unknown) + ".");
        }
        return words;
    }

    private static List<String> lowerGrades(TreatmentChoice.Choice chosen, Set<String> strictFor) {
        Map<EvidenceGrade, Set<String>> pests = new TreeMap<>();
        for (Turnaround.Cover cover : chosen.covers()) {
            if (strictFor.contains(cover.pest()) && cover.grade() != EvidenceGrade.A) {
                pests.computeIfAbsent(cover.grade(), grade -> new TreeSet<>()).add(cover.pest());
            }
        }
        List<String> words = new ArrayList<>();
        pests.forEach((grade, names) -> words.add("No row of grade A can be used on all of it against "
                + Words.list(names) + ": grade " + grade + " is the best there is."));
        return words;
    }

    private List<String> ruleWords(Leg leg, Collection<String> pests, List<AppliedTreatment> treatments) {
        Set<DeconRule> behind = new LinkedHashSet<>();
        DryingRules drying = rules.drying(leg.waters());
        treatments.forEach(treatment -> behind.addAll(drying.behind(treatment)));
        rules.about(DeconRule.Kind.AGENCY_TREATMENT, pests, leg.waters()).stream()
                .filter(rule -> treatments.stream().anyMatch(treatment -> rule.treatment()
                        .filter(treatment.recipe().treatment()::equals)
                        .isPresent()))
                .forEach(behind::add);
        behind.addAll(rules.about(DeconRule.Kind.CONTROLLED_AREA, pests, leg.waters()));
        rules.about(DeconRule.Kind.SUPERSEDED_TREATMENT, pests, leg.waters()).forEach(behind::add);
        return behind.stream()
                .map(rule -> "By " + RulesOfPlace.words(rule) + ": " + rule.text() + " Source: " + rule.source() + ".")
                .toList();
    }

    private String tierWords(Leg leg) {
        boolean controlled = !rules.about(
                        DeconRule.Kind.CONTROLLED_AREA, leg.pests().toCoverIntoProtected(), leg.waters())
                .isEmpty();
        Tier tier = leg.tier(controlled);
        String source =
                switch (leg.pests().worst()) {
                    case KNOWN -> "a known pest";
                    case SUSPECTED -> "a suspected pest";
                    case UNKNOWN -> "pests that nobody ruled out";
                    case FREE -> "no pest found";
                };
        String where = leg.intoProtected() ? "a protected water" : "another water";
        return "Tier " + tier + ", from a water with " + source + " into " + where + ": " + tier.asks() + ".";
    }
}
