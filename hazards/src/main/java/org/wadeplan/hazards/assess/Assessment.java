package org.wadeplan.hazards.assess;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wadeplan.hazards.limits.RiseWarning;

/**
 * What can hurt people on one visit, in the order in which to say it. It never says that nothing can.
 *
 * @param site site code
 * @param date day of the visit
 * @param registerVersion version of the register used
 * @param hazards ranked, see {@link AssessedHazard#FIRST_TO_SAY}
 * @param stopLimits breached ones first, then in the order of the hazards
 * @param rise how soon the water could rise, where people wade; a warning, never time in hand
 * @param notLookedFor features that nobody has reported present or absent, sorted; each may bring a hazard
 * @param setAside noted or eliminated hazards that are not on the list, with the reason
 */
public record Assessment(
        String site,
        LocalDate date,
        String registerVersion,
        List<AssessedHazard> hazards,
        List<StopLimit> stopLimits,
        Optional<RiseWarning> rise,
        List<String> notLookedFor,
        List<SetAside> setAside) {

    public Assessment {
        hazards = hazards.stream().sorted(AssessedHazard.FIRST_TO_SAY).toList();
        stopLimits = List.copyOf(stopLimits);
        notLookedFor = List.copyOf(notLookedFor);
        setAside = List.copyOf(setAside);
    }

    /** Limits that today's plan already breaches: nobody goes in while this is not empty. */
    public List<StopLimit> breaches() {
        return stopLimits.stream().filter(StopLimit::breached).toList();
    }

    public boolean stop() {
        return !breaches().isEmpty();
    }
}
