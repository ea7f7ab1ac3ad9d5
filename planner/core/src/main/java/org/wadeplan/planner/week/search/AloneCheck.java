package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether a crew could walk a sequence of stops on a day if it had nothing else to mind: no kit, no cleaning, no rest, no
 * other crew. What fails here fails in every week, so the search asks here first. Answers are kept.
 */
final class AloneCheck {

    private static final int MOST_TRIES = 8;

    private final WeekModel model;
    // Only ever asked by key, so its order never shows.
    private final List<Map<List<Integer>, Boolean>> known = new ArrayList<>();
    private final int[] started;
    private int startLaterBy;

    AloneCheck(WeekModel model) {
        this.model = model;
        this.started = new int[model.stops().size()];
        model.slots().forEach(slot -> known.add(new HashMap<>()));
    }

    boolean possible(int slot, int[] stops) {
        List<Integer> key = new ArrayList<>(stops.length);
        for (int stop : stops) {
            key.add(stop);
        }
        return known.get(slot)
                .computeIfAbsent(key, unused -> walkable(model.slots().get(slot), stops));
    }

    private boolean walkable(Slot slot, int[] stops) {
        int start = slot.earliestMin();
        for (int i = 0; i < MOST_TRIES; i++) {
            int end = walk(slot, stops, start);
            if (end < 0 || end > slot.latestEndMin()) {
                return false;
            }
            int excess = end - start - model.duty().maxShiftMin();
            if (excess <= 0 && startLaterBy == 0) {
                return true;
            }
            start += Math.max(excess, startLaterBy);
        }
        return true;
    }

    /** The earliest end of the day, or -1 where a window is missed. */
    private int walk(Slot slot, int[] stops, int start) {
        startLaterBy = 0;
        int clock = start + model.duty().loadMin();
        int place = model.depot();
        int water = -1;
        int wetSite = -1;
        for (int id : stops) {
            Stop stop = model.stops().get(id);
            if (stop.wets() && water >= 0 && stop.water() != water) {
                clock += model.driveMin()[place][model.depot()] + model.duty().loadMin();
                place = model.depot();
            } else if (stop.wets() && wetSite >= 0 && wetSite != stop.place()) {
                clock += model.rinseMin();
            }
            clock = visit(slot, stop, clock + model.driveMin()[place][stop.place()]);
            if (clock < 0) {
                return -1;
            }
            place = stop.place();
            water = stop.wets() ? stop.water() : water;
            wetSite = stop.wets() ? place : wetSite;
        }
        return clock + model.driveMin()[place][model.depot()] + model.duty().unloadMin();
    }

    private int visit(Slot slot, Stop stop, int arrival) {
        Stop before = stop.orderInJob() == 0
                ? stop
                : model.jobs().get(stop.job()).stops().get(stop.orderInJob() - 1);
        boolean linked = stop.orderInJob() > 0 && !stop.onLaterDay();
        int ready = linked
                ? Math.max(
                        arrival, started[before.id()] + stop.part().gapMinMin().orElse(0))
                : arrival;
        int[] windows = stop.windowMin()[slot.dateIndex()];
        for (int i = 0; i < windows.length; i += 2) {
            int start = Math.max(ready, windows[i]);
            if (start + stop.p80Min() <= windows[i + 1]) {
                started[stop.id()] = start;
                int gap = linked
                        ? start - started[before.id()] - stop.part().gapMaxMin().orElse(Integer.MAX_VALUE)
                        : 0;
                startLaterBy = Math.max(startLaterBy, gap);
                return start + stop.p80Min();
            }
        }
        return -1;
    }
}
