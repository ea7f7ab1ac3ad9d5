package org.wadeplan.planner.week.search;

import java.util.Arrays;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.StoreState;

/** What each kit set has touched, where it is, and when and for which waters it is free, at one moment of the week. */
final class KitLedger {

    static final int CLEAN = -1;
    static final int AT_DEPOT = -1;
    static final int IN_WATER = -2;
    static final int NOBODY = -1;

    /** Water it is dirty from; {@link #CLEAN}; or the number of waters, for what it touched before the round. */
    final int[] dirtyFrom;
    /** Slot whose crew carries it, or {@link #AT_DEPOT}, or {@link #IN_WATER}. */
    final int[] holder;
    /** Minute from which it can leave the depot. */
    final int[] freeAt;
    /** Bit per water to which it may go when clean. */
    final long[] releasedFor;

    final int[] lastSite;
    final int[] lastWater;
    final int[] lastSlot;
    final int[] jobInWater;

    KitLedger(int sets) {
        dirtyFrom = new int[sets];
        holder = new int[sets];
        freeAt = new int[sets];
        releasedFor = new long[sets];
        lastSite = new int[sets];
        lastWater = new int[sets];
        lastSlot = new int[sets];
        jobInWater = new int[sets];
    }

    void start(WeekModel model) {
        Arrays.fill(holder, AT_DEPOT);
        Arrays.fill(freeAt, Integer.MIN_VALUE / 2);
        Arrays.fill(lastSite, NOBODY);
        Arrays.fill(lastWater, NOBODY);
        Arrays.fill(lastSlot, NOBODY);
        Arrays.fill(jobInWater, NOBODY);
        for (int set = 0; set < holder.length; set++) {
            KitSet kit = model.kitSets().get(set);
            boolean clean =
                    kit.state() == StoreState.CLEAN_DRY && kit.exposedTo().isEmpty();
            dirtyFrom[set] = clean ? CLEAN : model.waters().size();
            releasedFor[set] = clean ? -1L : 0L;
        }
    }

    void copyFrom(KitLedger other) {
        System.arraycopy(other.dirtyFrom, 0, dirtyFrom, 0, dirtyFrom.length);
        System.arraycopy(other.holder, 0, holder, 0, holder.length);
        System.arraycopy(other.freeAt, 0, freeAt, 0, freeAt.length);
        System.arraycopy(other.releasedFor, 0, releasedFor, 0, releasedFor.length);
        System.arraycopy(other.lastSite, 0, lastSite, 0, lastSite.length);
        System.arraycopy(other.lastWater, 0, lastWater, 0, lastWater.length);
        System.arraycopy(other.lastSlot, 0, lastSlot, 0, lastSlot.length);
        System.arraycopy(other.jobInWater, 0, jobInWater, 0, jobInWater.length);
    }

    boolean dirtyAtDepot(int set) {
        return dirtyFrom[set] != CLEAN && holder[set] == AT_DEPOT;
    }
}
