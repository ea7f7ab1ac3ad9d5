package org.wadeplan.planner.method;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Consent.ConsentStatus;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Asks the decision table about each site. */
public final class MethodChooser {

    private MethodChooser() {}

    /** One decision for each site, in the order of the site list; overrides of the round count. */
    public static List<MethodDecision> decide(Round round) {
        return decide(round.methodTable(), round.sites(), round.consents()).stream()
                .map(decision -> round.header().methodOverrides().stream()
                        .filter(override -> override.site().equals(decision.site()))
                        .findFirst()
                        .map(override -> Overrides.applied(round.methodTable(), decision, override))
                        .orElse(decision))
                .toList();
    }

    static List<MethodDecision> decide(DecisionTable table, List<Site> sites, List<Consent> consents) {
        return sites.stream()
                .map(site -> new MethodDecision(
                        site.id(), decide(table, readable(table, caseOf(site, consents))), table.name(), table.hash()))
                .toList();
    }

    /**
     * Asks the table about one case.
     *
     * @param values what is known, by the names of the table's inputs; leave out what is not
     * @return the rule and its method; or what is missing; or why no rule fits; or the rules that clash
     * @throws IllegalArgumentException where a value has another type than its input
     */
    public static MethodOutcome decide(DecisionTable table, Map<String, CaseValue> values) {
        for (TableInput input : table.inputs()) {
            Optional.ofNullable(values.get(input.name()))
                    .filter(value -> value.type() != input.type())
                    .ifPresent(value -> {
                        throw new IllegalArgumentException(
                                input.name() + " is a " + input.type().word() + ", not " + value.words());
                    });
        }
        return new OutcomeWriter(table, values).outcome();
    }

    /** The same as a decision, with the table's name and version. */
    public static MethodDecision decide(DecisionTable table, String site, Map<String, CaseValue> values) {
        return new MethodDecision(site, decide(table, values), table.name(), table.hash());
    }

    /** What is known of a site, by the names that a table may use; what is not known is left out. */
    public static Map<String, CaseValue> caseOf(Site site, List<Consent> consents) {
        Optional<Boolean> nightAccess = nightAccess(site, consents);
        Map<String, CaseValue> values = new LinkedHashMap<>();
        for (SiteInput input : SiteInput.values()) {
            input.value(site.conditions(), nightAccess).ifPresent(value -> values.put(input.column(), value));
        }
        return values;
    }

    /** Leaves out what the table declares as another type: {@link MethodTableCheck} reports it, and it cannot be compared. */
    public static Map<String, CaseValue> readable(DecisionTable table, Map<String, CaseValue> values) {
        Map<String, CaseValue> readable = new LinkedHashMap<>(values);
        table.inputs().stream()
                .filter(input -> SiteInput.named(input.name())
                        .filter(known -> known.type() != input.type())
                        .isPresent())
                .forEach(input -> readable.remove(input.name()));
        return readable;
    }

    /** A no from the holder of the land outweighs the site list; a yes counts only where consent was given. */
    private static Optional<Boolean> nightAccess(Site site, List<Consent> consents) {
        List<Consent> here = consents.stream()
                .filter(consent -> consent.site().equals(site.id()))
                .toList();
        if (here.stream().anyMatch(consent -> consent.nightAccess().equals(Optional.of(false)))) {
            return Optional.of(false);
        }
        boolean granted = here.stream()
                .filter(consent ->
                        consent.status() == ConsentStatus.YES || consent.status() == ConsentStatus.CONDITIONAL)
                .anyMatch(consent -> consent.nightAccess().equals(Optional.of(true)));
        return site.nightAccess().or(() -> granted ? Optional.of(true) : Optional.empty());
    }
}
