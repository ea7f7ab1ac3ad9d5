package org.wadeplan.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wadeplan.planner.round.StoreItem;

/** Which units of which items went to which crew, of one kind on one day. An item counts once for each unit. */
final class Picks {

    private final Map<String, List<StoreItem>> byCrew = new LinkedHashMap<>();

    void add(String crew, StoreItem item) {
        byCrew.computeIfAbsent(crew, key -> new ArrayList<>()).add(item);
    }

    List<StoreItem> of(String crew) {
        return List.copyOf(byCrew.getOrDefault(crew, List.of()));
    }
}
