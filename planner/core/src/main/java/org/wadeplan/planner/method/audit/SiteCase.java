package org.wadeplan.planner.method.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.SiteInput;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/**
 * What a table is asked about one site.
 *
 * @param values what is known, by the names of inputs
 * @param uncertainties the standard uncertainty of those values that state one, in their units
 */
public record SiteCase(String site, Map<String, CaseValue> values, Map<String, Double> uncertainties) {

    /** Every site of the round as planned. */
    public static List<SiteCase> of(Round round) {
        return round.sites().stream()
                .map(site -> new SiteCase(site.id(), MethodChooser.caseOf(site, round.consents()), uncertainties(site)))
                .toList();
    }

    private static Map<String, Double> uncertainties(Site site) {
        Map<String, Double> stated = new LinkedHashMap<>();
        for (SiteInput input : SiteInput.values()) {
            input.standardUncertainty(site.conditions()).ifPresent(value -> stated.put(input.column(), value));
        }
        return stated;
    }
}
