package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;

/** Gathers the days on which a kind is enough and its spare is missing. */
final class SpareNotes {

    private final Store store;
    private final ItemFitness fitness;
    private final SortedMap<String, SortedMap<LocalDate, DayNeed>> missing = new TreeMap<>();

    SpareNotes(Store store, ItemFitness fitness) {
        this.store = store;
        this.fitness = fitness;
    }

    void note(List<DayNeed> needs, Picks spares) {
        for (DayNeed need : needs) {
            if (spares.of(need.crewDay().crew()).size() < need.spareUnits()) {
                missing.computeIfAbsent(need.kind(), kind -> new TreeMap<>())
                        .putIfAbsent(need.crewDay().date(), need);
            }
        }
    }

    List<SpareNote> notes() {
        List<SpareNote> notes = new ArrayList<>();
        missing.forEach((kind, byDate) -> notes.add(note(kind, byDate)));
        return List.copyOf(notes);
    }

    private SpareNote note(String kind, SortedMap<LocalDate, DayNeed> byDate) {
        List<String> against = new ArrayList<>();
        int inService = 0;
        for (StoreItem item : store.ofKind(kind)) {
            List<String> found = byDate.values().stream()
                    .limit(1)
                    .flatMap(need -> fitness.obstacle(item, need).stream())
                    .map(Obstacle::found)
                    .toList();
            against.addAll(found);
            inService += found.isEmpty() ? (int) item.quantity() : 0;
        }
        return new SpareNote(kind, List.copyOf(byDate.keySet()), inService, String.join("; ", against));
    }
}
