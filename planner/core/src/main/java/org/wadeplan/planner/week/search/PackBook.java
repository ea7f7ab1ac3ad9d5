package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wadeplan.planner.effort.BatteryNeed;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.WeekInputs;

/**
 * Battery packs by day. Packs are charged overnight, so none serves two visits of one date; a pack gives its share of
 * button seconds by its health. Handed out healthiest first in the order of slots, as they are when loads are picked.
 */
final class PackBook {

    private static final String PACK = "battery-pack";
    private static final int WHOLE = 1000;

    /** Thousandths of a healthy pack, falling. */
    private final int[] health;

    private final int[] packsNeeded;
    private final int[] thousandthsAsked;

    PackBook(WeekInputs inputs, List<Stop> stops) {
        this.health = inputs.round().store().ofKind(PACK).stream()
                .filter(pack -> pack.state() != StoreState.OUT_OF_SERVICE)
                .map(PackBook::thousandths)
                .sorted(Comparator.reverseOrder())
                .mapToInt(Integer::intValue)
                .toArray();
        this.packsNeeded = new int[stops.size()];
        this.thousandthsAsked = new int[stops.size()];
        for (Stop stop : stops) {
            if (stop.part().part() == VisitPart.SURVEY) {
                inputs.effort(stop.site().id())
                        .flatMap(VisitEffort::batteries)
                        .ifPresent(need -> note(stop.id(), need));
            }
        }
    }

    private void note(int stop, BatteryNeed need) {
        packsNeeded[stop] = need.packs();
        thousandthsAsked[stop] =
                (int) Math.ceil(WHOLE * need.reserveFactor() * need.expectedShockS() / need.usableSPerPack());
    }

    private static int thousandths(StoreItem pack) {
        return (int) Math.floor(WHOLE / 100.0 * pack.healthPct().orElse(100));
    }

    /** True where every date has packs enough for its visits. */
    boolean enough(WeekModel model, WeekState state) {
        return shortDate(model, state) < 0;
    }

    /** The index of the first date without enough packs, or -1. */
    int shortDate(WeekModel model, WeekState state) {
        int date = -1;
        int next = 0;
        for (int slot = 0; slot < state.stops().length; slot++) {
            if (model.slots().get(slot).dateIndex() != date) {
                date = model.slots().get(slot).dateIndex();
                next = 0;
            }
            for (int stop : state.stops()[slot]) {
                next = taken(stop, next);
                if (next < 0) {
                    return date;
                }
            }
        }
        return -1;
    }

    /** Where the next visit's packs begin, or -1 where these are not enough. */
    private int taken(int stop, int from) {
        int next = from;
        int given = 0;
        while (next - from < packsNeeded[stop] || given < thousandthsAsked[stop]) {
            if (next == health.length) {
                return -1;
            }
            given += health[next++];
        }
        return next;
    }

    /** For a person: what the date asks and what there is. */
    String words(WeekModel model, WeekState state) {
        int date = shortDate(model, state);
        if (date < 0) {
            return "";
        }
        List<String> asked = new ArrayList<>();
        for (int slot = 0; slot < state.stops().length; slot++) {
            if (model.slots().get(slot).dateIndex() == date) {
                for (int stop : state.stops()[slot]) {
                    if (packsNeeded[stop] > 0) {
                        asked.add(model.stops().get(stop).site().id() + " " + packsNeeded[stop]);
                    }
                }
            }
        }
        return model.dates().get(date) + " asks for more battery packs than the store has charged (" + health.length
                + "): " + String.join(", ", asked);
    }
}
