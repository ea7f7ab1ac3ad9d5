package org.wadeplan.planner.files;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.hazards.register.Hazard;
import org.wadeplan.hazards.register.HazardRegister;
import org.wadeplan.planner.round.SiteHazard;

/** A hazard noted at a site must be one of the register, or it would fall out of the briefing. */
final class HazardIds {

    private HazardIds() {}

    static List<Problem> check(Table<SiteHazard> siteHazards, Optional<HazardRegister> register) {
        KnownIds known = new KnownIds("an id of the hazard register", register.map(table -> table.hazards().stream()
                .map(Hazard::id)
                .collect(Collectors.toCollection(TreeSet::new))));
        return known.check(Severity.ERROR, siteHazards, "hazard");
    }
}
