package org.wadeplan.geo.lines;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What came out of reading a file's lines.
 *
 * @param lines every line with a length, in the file's order
 * @param leftOut every shape and part of a shape that is no such line, in the file's order: nothing is lost silently
 */
public record LineReading(LineSet lines, List<LeftOut> leftOut) {

    public LineReading {
        leftOut = List.copyOf(leftOut);
    }

    /** How many shapes or parts were left out for each reason; a reason without any is not listed. */
    public Map<Reason, Integer> counts() {
        Map<Reason, Integer> counts = new EnumMap<>(Reason.class);
        leftOut.forEach(each -> counts.merge(each.reason(), 1, Integer::sum));
        return counts;
    }

    /**
     * One shape, or one part of a shape, that is no line with a length.
     *
     * @param id what the file calls the feature, with the number of the part where there are several: {@code 17/2}
     */
    public record LeftOut(String id, Reason reason) {}

    /** Why something in a layer of lines is not among the lines. */
    public enum Reason {
        NO_SHAPE("have no shape at all"),
        EMPTY("have a shape without vertices"),
        NO_LENGTH("have no length: all vertices lie in one place"),
        NOT_FINITE("have a vertex that is no place: infinite, not a number, or further out than any map reaches"),
        NOT_A_LINE("are points, areas or curves, not lines of straight segments"),
        UNREADABLE("break off or are damaged");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** What such shapes do, for a sentence that begins with their number. */
        public String words() {
            return words;
        }
    }
}
