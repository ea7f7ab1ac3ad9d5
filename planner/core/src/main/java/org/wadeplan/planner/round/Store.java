package org.wadeplan.planner.round;

import java.util.List;
import java.util.Optional;

/**
 * What the agency owns or has hired, and what the methods ask for.
 *
 * @param packSeconds by rising conductivity
 * @param voltageCeilings how far the units may be turned up, by rising conductivity; empty where the round has none
 */
public record Store(
        List<KitSet> kitSets,
        List<StoreItem> items,
        List<KitNeed> needs,
        List<PackSeconds> packSeconds,
        List<VoltageCeiling> voltageCeilings) {

    public Optional<KitSet> kitSet(String id) {
        return kitSets.stream().filter(set -> set.id().equals(id)).findFirst();
    }

    public List<StoreItem> ofKind(String kind) {
        return items.stream().filter(item -> item.kind().equals(kind)).toList();
    }
}
