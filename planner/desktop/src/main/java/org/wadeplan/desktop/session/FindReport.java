package org.wadeplan.desktop.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What follows from a pest that somebody saw.
 *
 * @param title the find in a sentence
 * @param sections in the order of reading
 * @param flagged kit sets that were or may have been exposed, each with the reason
 * @param week the week with its cleanings worked out anew; empty where they stay as they are
 */
public record FindReport(
        SeenPest seen, String title, List<Section> sections, Map<String, String> flagged, Optional<WeekInForce> week) {

    /** A heading with its lines; a section without lines says that there is nothing under it. */
    public record Section(String head, List<String> lines) {}
}
