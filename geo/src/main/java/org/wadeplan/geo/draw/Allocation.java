package org.wadeplan.geo.draw;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** How many of the wanted units each stratum gets. */
public sealed interface Allocation {

    /** In proportion to the length of each stratum, at least one each: every metre of stream is about equally likely. */
    record Proportional() implements Allocation {}

    /** The same number for every stratum; what does not divide goes to the longest. */
    record Equal() implements Allocation {}

    /**
     * As given.
     *
     * @param sizes by name of stratum, each 1 or more
     */
    record Given(Map<String, Integer> sizes) implements Allocation {
        public Given {
            sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
        }
    }

    /** {@code proportional}, {@code equal} or {@code given} */
    default String words() {
        return this instanceof Proportional ? "proportional" : this instanceof Equal ? "equal" : "given";
    }
}
