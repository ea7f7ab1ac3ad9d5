package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.week.ActivityKind;

/** What happened while walking through crew-days, written down only when somebody wants to read it. */
final class DayLog {

    /** One stretch; {@code stop} is -1 where it is no visit. */
    record Entry(
            int slot, ActivityKind kind, int start, int end, int place, int stop, List<Integer> sets, String note) {}

    /** One treatment of one kit set. */
    record Cleaning(int set, int slot, int dirtyFrom, int start, int crewFree, int released) {}

    private final List<Entry> entries = new ArrayList<>();
    private final List<Cleaning> cleanings = new ArrayList<>();
    private boolean on;

    void clear(boolean listening) {
        entries.clear();
        cleanings.clear();
        on = listening;
    }

    /** Forgets what one crew-day wrote while it was being tried. */
    void forget(int slot) {
        if (on) {
            entries.removeIf(entry -> entry.slot() == slot);
            cleanings.removeIf(cleaning -> cleaning.slot() == slot);
        }
    }

    boolean on() {
        return on;
    }

    void add(Entry entry) {
        if (on && entry.end() > entry.start()) {
            entries.add(entry);
        }
    }

    void add(Cleaning cleaning) {
        if (on) {
            cleanings.add(cleaning);
        }
    }

    int[] mark() {
        return new int[] {entries.size(), cleanings.size()};
    }

    void backTo(int[] mark) {
        entries.subList(mark[0], entries.size()).clear();
        cleanings.subList(mark[1], cleanings.size()).clear();
    }

    List<Entry> entries() {
        return entries;
    }

    List<Cleaning> cleanings() {
        return cleanings;
    }
}
