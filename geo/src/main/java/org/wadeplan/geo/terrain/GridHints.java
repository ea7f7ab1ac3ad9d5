package org.wadeplan.geo.terrain;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person says about a grid that the file itself does not, or says wrongly.
 *
 * @param crs code of its coordinate system, over whatever the file states
 * @param verticalStepM smallest difference of height that the grid can hold, metres, over what was measured
 * @param datum what heights are counted from, in words: {@code mean sea level, EGM96}
 */
public record GridHints(Optional<String> crs, OptionalDouble verticalStepM, Optional<String> datum) {

    /** The file speaks for itself. */
    public static final GridHints NONE = new GridHints(Optional.empty(), OptionalDouble.empty(), Optional.empty());
}
