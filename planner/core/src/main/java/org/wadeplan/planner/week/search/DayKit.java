package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.StoreState;

/**
 * The kit sets on the move: which are taken, what they touch, when they are cleaned.
 *
 * <p>Sets that come from one water together are cleaned side by side, as many at a time as there are people, with shared
 * baths and bays one after the other where they hold no more; batches from different waters follow each other.
 */
final class DayKit {

    private final WeekModel model;
    private final KitLedger ledger;
    private final KitLedger before;
    private final BayBook bays;
    private final DayLog log;
    private final int[] trapsOfJob;
    private int readyAt;
    private boolean rinseFirst;
    private int dirtyToClean;
    private String failure = "";

    DayKit(WeekModel model, KitLedger ledger, BayBook bays, DayLog log) {
        this.model = model;
        this.ledger = ledger;
        this.before = new KitLedger(model.kitSets().size());
        this.bays = bays;
        this.log = log;
        this.trapsOfJob = new int[model.jobs().size()];
    }

    int readyAt() {
        return readyAt;
    }

    boolean rinseFirst() {
        return rinseFirst;
    }

    String failure() {
        return failure;
    }

    /** Steps of kit sets from an infested water to a cleaner one since the last call. */
    int takeDirtyToClean() {
        int steps = dirtyToClean;
        dirtyToClean = 0;
        return steps;
    }

    /** Takes what a stretch of stops in one water needs; false where there is no set for it. */
    boolean take(Slot slot, List<Stop> part, int now) {
        readyAt = now;
        rinseFirst = false;
        boolean wading = false;
        boolean waders = false;
        int water = -1;
        for (Stop stop : part) {
            wading |= stop.purposes().contains(KitPurpose.WADING);
            waders |= stop.purposes().contains(KitPurpose.WADERS_ONLY);
            water = stop.wets() ? stop.water() : water;
        }
        if (wading && !pick(slot, KitPurpose.WADING, water, part, now)) {
            return false;
        }
        if (waders && !wading && !pick(slot, KitPurpose.WADERS_ONLY, water, part, now)) {
            return false;
        }
        for (Stop stop : part) {
            if (stop.purposes().contains(KitPurpose.TRAPS) && !stop.lifts()) {
                if (!pick(slot, KitPurpose.TRAPS, water, List.of(stop), now)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean pick(Slot slot, KitPurpose purpose, int water, List<Stop> part, int now) {
        int best = -1;
        long bestCost = Long.MAX_VALUE;
        for (int set = 0; set < model.kitSets().size(); set++) {
            if (usable(slot, set, purpose, water)) {
                long cost = cost(set, purpose, water, now);
                if (cost < bestCost) {
                    bestCost = cost;
                    best = set;
                }
            }
        }
        if (best < 0) {
            failure = slot.name() + ": no kit set for " + purpose + " is clean and dry, or was last used in "
                    + model.waters().get(water).id() + " only, and can be cleaned after it";
            return false;
        }
        takeOut(slot, best, water, part);
        return true;
    }

    private void takeOut(Slot slot, int set, int water, List<Stop> part) {
        readyAt = Math.max(readyAt, ledger.freeAt[set]);
        int lastSite = ledger.lastSite[set];
        rinseFirst |= ledger.dirtyFrom[set] == water
                && part.stream().anyMatch(stop -> stop.wets() && stop.place() != lastSite);
        dirtyToClean += model.dirtyToClean(ledger.lastWater[set], water) ? 1 : 0;
        ledger.holder[set] = slot.index();
        ledger.lastSlot[set] = slot.index();
        ledger.lastWater[set] = water;
        if (model.kitSets().get(set).purpose() == KitPurpose.TRAPS) {
            trapsOfJob[part.get(0).job()] = set;
        }
    }

    private boolean usable(Slot slot, int set, KitPurpose purpose, int water) {
        KitPurpose has = model.kitSets().get(set).purpose();
        boolean serves = has == purpose || (purpose == KitPurpose.WADERS_ONLY && has == KitPurpose.WADING);
        if (!serves
                || ledger.holder[set] != KitLedger.AT_DEPOT
                || model.kitSets().get(set).state() == StoreState.OUT_OF_SERVICE
                || !model.treatments()[set][water].possible()) {
            return false;
        }
        int last = ledger.lastSlot[set];
        if (last >= 0 && last != slot.index() && model.slots().get(last).dateIndex() == slot.dateIndex()) {
            return false;
        }
        return ledger.dirtyFrom[set] == KitLedger.CLEAN
                ? (ledger.releasedFor[set] >> water & 1) != 0
                : ledger.dirtyFrom[set] == water;
    }

    /** Free soonest; then one already wet from this water; then no step to a cleaner water; then a set used before. */
    private long cost(int set, KitPurpose purpose, int water, int now) {
        long cost = Math.max(0, ledger.freeAt[set] - now);
        cost = cost * 2 + (model.kitSets().get(set).purpose() == purpose ? 0 : 1);
        cost = cost * 2 + (ledger.dirtyFrom[set] == water ? 0 : 1);
        cost = cost * 2 + (model.dirtyToClean(ledger.lastWater[set], water) ? 1 : 0);
        return cost * 2 + (ledger.lastWater[set] == KitLedger.NOBODY ? 1 : 0);
    }

    /** Marks what a stop wets, sets or lifts, and returns those sets. */
    List<Integer> use(Slot slot, Stop stop, int end) {
        if (!stop.wets()) {
            return List.of();
        }
        List<Integer> wet = new ArrayList<>();
        for (int set = 0; set < model.kitSets().size(); set++) {
            if (ledger.holder[set] == slot.index() && model.kitSets().get(set).purpose() != KitPurpose.TRAPS) {
                wet.add(set);
            }
        }
        if (stop.purposes().contains(KitPurpose.TRAPS)) {
            int traps = trapsOfJob[stop.job()];
            wet.add(traps);
            ledger.holder[traps] = stop.sets() ? KitLedger.IN_WATER : slot.index();
            ledger.jobInWater[traps] = stop.sets() ? stop.job() : KitLedger.NOBODY;
            ledger.lastSlot[traps] = slot.index();
        }
        for (int set : wet) {
            ledger.dirtyFrom[set] = stop.water();
            ledger.lastSite[set] = stop.place();
            ledger.freeAt[set] = end;
        }
        return wet;
    }

    List<Integer> carried(Slot slot) {
        if (!log.on()) {
            return List.of();
        }
        List<Integer> sets = new ArrayList<>();
        for (int set = 0; set < model.kitSets().size(); set++) {
            if (ledger.holder[set] == slot.index()) {
                sets.add(set);
            }
        }
        return sets;
    }

    void back(Slot slot, int now) {
        for (int set = 0; set < model.kitSets().size(); set++) {
            if (ledger.holder[set] == slot.index()) {
                ledger.holder[set] = KitLedger.AT_DEPOT;
                ledger.freeAt[set] = now;
            }
        }
    }

    /** Cleans a crew's own sets where the crew is free again early enough; returns the minutes it took. */
    int cleanWhileWaiting(DayWalk walk, Slot slot, IntPredicate earlyEnough) {
        int spent = 0;
        for (List<Integer> batch : batches(slot, true, walk.now())) {
            spent += cleanIf(walk, slot, batch, earlyEnough);
        }
        return spent;
    }

    /** Cleans at the end of the day as the crew's rule says; returns the minutes it took. */
    int endOfDay(DayWalk walk, Slot slot, int decon, int start, boolean helpOthers) {
        int spent = 0;
        if (decon != WeekState.PUT_ASIDE) {
            for (List<Integer> batch : batches(slot, true, walk.now())) {
                spent += cleanIf(walk, slot, batch, free -> true);
            }
        }
        if (decon == WeekState.TREAT_ALL && helpOthers) {
            int latest = Math.min(start + model.duty().maxShiftMin(), slot.latestEndMin())
                    - model.duty().unloadMin();
            for (List<Integer> batch : batches(slot, false, walk.now())) {
                spent += cleanIf(walk, slot, batch, free -> free <= latest);
            }
        }
        return spent;
    }

    /** Dirty sets at the depot by the water they come from, of this crew-day or of all others. */
    private List<List<Integer>> batches(Slot slot, boolean own, int now) {
        List<List<Integer>> batches = new ArrayList<>();
        for (int water = 0; water <= model.waters().size(); water++) {
            List<Integer> batch = new ArrayList<>();
            for (int set = 0; set < model.kitSets().size(); set++) {
                if (ledger.dirtyAtDepot(set)
                        && ledger.dirtyFrom[set] == water
                        && ledger.freeAt[set] <= now
                        && (ledger.lastSlot[set] == slot.index()) == own
                        && model.treatments()[set][water].possible()) {
                    batch.add(set);
                }
            }
            if (!batch.isEmpty()) {
                batches.add(batch);
            }
        }
        return batches;
    }

    private int cleanIf(DayWalk walk, Slot slot, List<Integer> batch, IntPredicate earlyEnough) {
        before.copyFrom(ledger);
        int bayMark = bays.mark();
        int[] logMark = log.on() ? log.mark() : new int[0];
        int start = walk.now();
        int free = clean(slot, batch, start);
        if (!earlyEnough.test(free)) {
            ledger.copyFrom(before);
            bays.backTo(bayMark);
            if (log.on()) {
                log.backTo(logMark);
            }
            return 0;
        }
        walk.cleanUntil(free, batch);
        return free - start;
    }

    private int clean(Slot slot, List<Integer> batch, int start) {
        int hands = Math.max(1, slot.people().length);
        int[] handFree = new int[batch.size()];
        int allFree = start;
        for (int i = 0; i < batch.size(); i++) {
            int set = batch.get(i);
            int from = i < hands ? start : handFree[i - hands];
            handFree[i] = cleanOne(slot, set, from);
            allFree = Math.max(allFree, handFree[i]);
        }
        return allFree;
    }

    private int cleanOne(Slot slot, int set, int start) {
        int dirtyFrom = ledger.dirtyFrom[set];
        SetTreatment treatment = model.treatments()[set][dirtyFrom];
        int clock = start;
        int crewFree = start;
        for (int i = 0; i < treatment.steps().size(); i++) {
            int minutes = treatment.steps().get(i).minutes();
            int resource = treatment.resources().get(i);
            clock = (resource < 0 ? clock : bays.book(resource, clock, minutes)) + minutes;
            crewFree = treatment.steps().get(i).crewBusy() ? clock : crewFree;
        }
        ledger.dirtyFrom[set] = KitLedger.CLEAN;
        ledger.freeAt[set] = clock;
        ledger.releasedFor[set] = treatment.releasedFor();
        log.add(new DayLog.Cleaning(set, slot.index(), dirtyFrom, start, crewFree, clock));
        return crewFree;
    }
}
