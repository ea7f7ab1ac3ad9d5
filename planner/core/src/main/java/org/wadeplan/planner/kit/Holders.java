package org.wadeplan.planner.kit;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.CrewDay;

/** Who had which item last, and until when, so that crews keep their things and nothing is in two places overnight. */
final class Holders {

    private record Holding(String crew, Instant until) {}

    private final Map<String, Holding> byItem = new HashMap<>();

    void took(StoreItem item, CrewDay day) {
        byItem.merge(
                item.id(),
                new Holding(day.crew(), day.end()),
                (before, now) -> before.until().isAfter(now.until()) ? new Holding(now.crew(), before.until()) : now);
    }

    /** 0 where the crew had it last, 1 where nobody did, 2 where another crew did. */
    int claim(StoreItem item, CrewDay day) {
        Holding held = byItem.get(item.id());
        if (held == null) {
            return 1;
        }
        return held.crew().equals(day.crew()) ? 0 : 2;
    }

    /** True where another crew-day that has the item is not over when this one starts to load. */
    boolean outWithOther(StoreItem item, CrewDay day) {
        Holding held = byItem.get(item.id());
        return held != null && held.until().isAfter(day.start());
    }
}
