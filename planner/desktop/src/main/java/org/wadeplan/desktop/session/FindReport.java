package org.wadeplan.desktop.session;

import java.util.List;
import java.util.Map;
import org.wadeplan.planner.round.Round;

/**
 * What follows from a pest that somebody saw.
 *
 * @param title the find in a sentence
 * @param sections in the order of reading
 * @param flagged kit sets that were in that water, or are to go there
 * @param round the round with the pest known in that water
 * @param week the week with its cleanings worked out anew
 */
public record FindReport(
        SeenPest seen, String title, List<Section> sections, Map<String, Flag> flagged, Round round, WeekInForce week) {

    /**
     * Why a kit set is flagged.
     *
     * @param exposed true where it was in that water by the time of the sighting; false where it is still to go there
     */
    public record Flag(boolean exposed, String why) {}

    /** A heading with its lines; a section without lines says that there is nothing under it. */
    public record Section(String head, List<String> lines) {}
}
