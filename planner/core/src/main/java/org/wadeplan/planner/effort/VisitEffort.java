package org.wadeplan.planner.effort;

import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.VisitPart;

/**
 * What a visit by its method takes.
 *
 * @param parts in order
 * @param settings for electrofishing where an earlier visit recorded some
 * @param batteries for electrofishing
 */
public record VisitEffort(
        String site,
        String method,
        List<PartEffort> parts,
        Optional<StartSettings> settings,
        Optional<BatteryNeed> batteries) {

    public Optional<PartEffort> part(VisitPart part) {
        return parts.stream().filter(effort -> effort.part() == part).findFirst();
    }
}
