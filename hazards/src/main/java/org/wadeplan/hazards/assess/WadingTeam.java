package org.wadeplan.hazards.assess;

import java.util.Optional;
import org.wadeplan.hazards.limits.PersonStability.Footing;
import org.wadeplan.hazards.limits.Wader;
import org.wadeplan.hazards.limits.WadingProfile;

/**
 * The weakest of those who wade.
 *
 * @param profile row of the wading table
 * @param smallest body of the smallest wader, where given; used to compute, never printed
 * @param footing of the bed
 */
public record WadingTeam(WadingProfile profile, Optional<Wader> smallest, Footing footing) {

    /** Nobody has said who wades: the row for new waders. */
    public static WadingTeam unknown() {
        return of(WadingProfile.NEW);
    }

    public static WadingTeam of(WadingProfile profile) {
        return new WadingTeam(profile, Optional.empty(), Footing.NORMAL);
    }
}
