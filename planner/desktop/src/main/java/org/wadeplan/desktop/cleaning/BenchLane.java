package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.util.List;

/** One tub, bay or freezer along the week, with the kit sets that lie in it. */
public record BenchLane(String label, List<Turn> turns) {

    /** One kit set in it. */
    public record Turn(String kitSet, Instant from, Instant to, String spoken) {}
}
