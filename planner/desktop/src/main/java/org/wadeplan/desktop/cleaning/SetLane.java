package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.desktop.session.FindReport;

/**
 * A kit set along the week.
 *
 * @param purpose in a word
 * @param flagged why a find concerns it; empty where none does
 * @param spans one after the other, without gaps
 */
public record SetLane(String kitSet, String purpose, Optional<FindReport.Flag> flagged, List<SetSpan> spans) {

    Optional<SetSpan> at(Instant moment) {
        return spans.stream().filter(span -> span.holds(moment)).findFirst();
    }
}
