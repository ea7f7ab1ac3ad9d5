package org.wadeplan.planner.week.search;

import java.util.List;
import org.wadeplan.planner.round.DeconResource;

/** Who has which shared bath, bay or room when. Bookings can be taken back to a mark. */
final class BayBook {

    private final int[] capacities;
    private int[] resource = new int[64];
    private int[] from = new int[64];
    private int[] until = new int[64];
    private int size;

    BayBook(List<DeconResource> resources) {
        capacities = resources.stream()
                .mapToInt(one -> Math.max(1, one.capacityKitSets()))
                .toArray();
    }

    int mark() {
        return size;
    }

    void backTo(int mark) {
        size = mark;
    }

    /** Books the first free stretch not before a minute and returns its start. */
    int book(int which, int notBefore, int minutes) {
        int start = notBefore;
        int clash = firstEndOfClash(which, start, minutes);
        while (clash > start) {
            start = clash;
            clash = firstEndOfClash(which, start, minutes);
        }
        add(which, start, start + minutes);
        return start;
    }

    /** The minute to try next where the place is full at some moment of the stretch; the start itself where it is not. */
    private int firstEndOfClash(int which, int start, int minutes) {
        int overlapping = 0;
        int soonest = Integer.MAX_VALUE;
        for (int i = 0; i < size; i++) {
            if (resource[i] == which && from[i] < start + minutes && until[i] > start) {
                overlapping++;
                soonest = Math.min(soonest, until[i]);
            }
        }
        return overlapping < capacities[which] ? start : soonest;
    }

    private void add(int which, int start, int end) {
        if (size == resource.length) {
            resource = java.util.Arrays.copyOf(resource, size * 2);
            from = java.util.Arrays.copyOf(from, size * 2);
            until = java.util.Arrays.copyOf(until, size * 2);
        }
        resource[size] = which;
        from[size] = start;
        until[size] = end;
        size++;
    }
}
