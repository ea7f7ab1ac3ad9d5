package org.wadeplan.geo.terrain;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Problem;

/** Cells that hold a number where nothing is known. */
final class NoData {

    /** Values that programs commonly put there and that are no height on Earth (common practice). */
    private static final float[] USUAL = {-32768, -9999, -99999, -32767, -3.4028235e38f, 3.4028235e38f};

    private NoData() {}

    /**
     * Puts NaN in their place.
     *
     * @param stated the value that the file names for it
     * @return a note where the file names none and a usual one was taken
     */
    static Optional<Problem> clear(float[] heights, OptionalDouble stated, GridFaults faults) {
        if (stated.isPresent()) {
            clear(heights, (float) stated.getAsDouble());
            return Optional.empty();
        }
        Optional<Problem> note = Optional.empty();
        for (float usual : USUAL) {
            if (clear(heights, usual)) {
                note = Optional.of(faults.usualNoData(usual));
            }
        }
        return note;
    }

    private static boolean clear(float[] heights, float noData) {
        boolean any = false;
        for (int i = 0; i < heights.length; i++) {
            if (heights[i] == noData || Float.isInfinite(heights[i])) {
                heights[i] = Float.NaN;
                any = true;
            }
        }
        return any;
    }
}
