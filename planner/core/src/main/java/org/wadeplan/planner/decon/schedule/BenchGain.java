package org.wadeplan.planner.decon.schedule;

import java.util.Optional;

/**
 * How much sooner a kit set could be released.
 *
 * @param place label of the place of which one more would be needed; empty: with what there is, begun as soon as set and crew
 *     are back
 * @param minutesEarlier than in the week as it stands, above 0
 * @param ofThemByStarting how many of those minutes come from beginning as soon as set and crew are back
 */
public record BenchGain(BenchTask task, Optional<String> place, int minutesEarlier, int ofThemByStarting) {

    /** {@code with one more hot-dip bay T2 is released 75 min earlier (60 min with those there are)}. */
    public String words() {
        String earlier = task.kitSet() + " is released " + minutesEarlier + " min earlier";
        if (place.isEmpty()) {
            return "begun as soon as set and crew are back, " + earlier;
        }
        String share = ofThemByStarting > 0
                ? " (" + ofThemByStarting + " of them by beginning as soon as set and crew are back)"
                : "";
        return "with one more of: " + place.get() + ", " + earlier + share;
    }
}
