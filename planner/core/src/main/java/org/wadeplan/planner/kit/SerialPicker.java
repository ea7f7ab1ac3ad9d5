package org.wadeplan.planner.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.planner.round.StoreItem;

/**
 * Gives the serials of one kind to the crews of one day, each serial to one crew: it comes back used, so it is not shared
 * within a day. As many needs as possible are met (augmenting paths), then spares from what is left. A crew gets what it had
 * before where that costs nobody anything.
 */
final class SerialPicker {

    private final List<StoreItem> units;
    private final ItemFitness fitness;
    private final Holders holders;
    private final List<Slot> slots = new ArrayList<>();

    /** One unit asked for, and the unit it got. */
    private static final class Slot {
        private final DayNeed need;
        private Optional<Integer> unit = Optional.empty();

        private Slot(DayNeed need) {
            this.need = need;
        }
    }

    SerialPicker(List<StoreItem> items, ItemFitness fitness, Holders holders) {
        this.units = items.stream().flatMap(item -> units(item).stream()).toList();
        this.fitness = fitness;
        this.holders = holders;
    }

    /** The picks for the needs themselves. */
    Picks needs(List<DayNeed> needs) {
        for (DayNeed need : needs) {
            for (int count = 0; count < need.units(); count++) {
                Slot slot = new Slot(need);
                slots.add(slot);
                place(slot, new HashSet<>());
            }
        }
        return picks();
    }

    /** The picks for spares, from what the needs left. */
    Picks spares(List<DayNeed> needs) {
        Picks spares = new Picks();
        for (DayNeed need : needs) {
            for (int count = 0; count < need.spareUnits(); count++) {
                Slot slot = new Slot(need);
                candidates(slot).stream()
                        .filter(unit -> holder(unit).isEmpty())
                        .findFirst()
                        .ifPresent(unit -> {
                            slot.unit = Optional.of(unit);
                            slots.add(slot);
                            spares.add(need.crewDay().crew(), units.get(unit));
                        });
            }
        }
        return spares;
    }

    private boolean place(Slot slot, Set<Integer> tried) {
        for (int unit : candidates(slot)) {
            if (tried.add(unit)) {
                Optional<Slot> holder = holder(unit);
                if (holder.isEmpty() || place(holder.get(), tried)) {
                    slot.unit = Optional.of(unit);
                    return true;
                }
            }
        }
        return false;
    }

    private Optional<Slot> holder(int unit) {
        return slots.stream()
                .filter(slot -> slot.unit.filter(held -> held == unit).isPresent())
                .findFirst();
    }

    /** Units that may go with the slot's crew: of its own kit sets first, then what it had, then what nobody had. */
    private List<Integer> candidates(Slot slot) {
        List<Integer> fit = new ArrayList<>();
        for (int unit = 0; unit < units.size(); unit++) {
            StoreItem item = units.get(unit);
            if (fitness.obstacle(item, slot.need).isEmpty() && !holders.outWithOther(item, slot.need.crewDay())) {
                fit.add(unit);
            }
        }
        fit.sort(Comparator.comparingInt(
                        (Integer unit) -> units.get(unit).kitSet().isPresent() ? 0 : 1)
                .thenComparingInt(unit -> holders.claim(units.get(unit), slot.need.crewDay())));
        return fit;
    }

    private Picks picks() {
        Picks picks = new Picks();
        for (Slot slot : slots) {
            slot.unit.ifPresent(unit -> picks.add(slot.need.crewDay().crew(), units.get(unit)));
        }
        return picks;
    }

    private static List<StoreItem> units(StoreItem item) {
        return Collections.nCopies((int) Math.max(0, Math.floor(item.quantity())), item);
    }
}
