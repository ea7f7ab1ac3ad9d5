package org.wadeplan.planner.method;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    /** With uncertainties that are stated beside the round, in place of its own where both are. */
    public SiteCase with(Map<String, Double> stated) {
        Map<String, Double> all = new LinkedHashMap<>(uncertainties);
        all.putAll(stated);
        return new SiteCase(site, values, all);
    }

    /** With values that were measured, in place of the planned ones. */
    public SiteCase measured(Map<String, CaseValue> readings) {
        Map<String, CaseValue> all = new LinkedHashMap<>(values);
        all.putAll(readings);
        return new SiteCase(site, all, uncertainties);
    }

    private static Map<String, Double> uncertainties(Site site) {
        Map<String, Double> stated = new LinkedHashMap<>();
        for (SiteInput input : SiteInput.values()) {
            input.standardUncertainty(site.conditions()).ifPresent(value -> stated.put(input.column(), value));
        }
        return stated;
    }
}
