package org.wadeplan.planner.effort;

import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;

/**
 * What a visit by its method takes.
 *
 * @param parts in order
 * @param settings for electrofishing where an earlier visit recorded some
 * @param batteries for electrofishing
 * @param shock button time, for electrofishing
 */
public record VisitEffort(
        String site,
        String method,
        List<PartEffort> parts,
        Optional<StartSettings> settings,
        Optional<BatteryNeed> batteries,
        Optional<ShockTime> shock) {

    /** True where the method puts current into the water. */
    public boolean electric(Round round) {
        return round.method(method)
                .filter(known -> known.kind() == MethodKind.ELECTROFISHING)
                .isPresent();
    }

    public Optional<PartEffort> part(VisitPart part) {
        return parts.stream().filter(effort -> effort.part() == part).findFirst();
    }
}
