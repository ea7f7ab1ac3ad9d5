package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.wadeplan.planner.week.DeconTask;

/**
 * A cleaning that keeps no pest from another water, because the set goes back into the one it comes from before any other.
 *
 * @param water both left and entered next
 * @param nextAt when it is in that water again
 * @param nextSite where
 */
public record OptionalClean(DeconTask task, String water, Instant nextAt, String nextSite) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    /** Why it could be left out, in a sentence. */
    public String words(ZoneId zone) {
        return "The clean of " + task.kitSet() + " on "
                + DAY.format(task.start().atZone(zone))
                + " is optional: no pest is known in " + water + ", and the set goes back there first, to " + nextSite
                + " on " + MOMENT.format(nextAt.atZone(zone)) + ".";
    }
}
