package org.wadeplan.geo.lines;

import java.util.Arrays;

/** Groups the ends of lines by exactly equal coordinates, in a hash table of places. */
final class EndsMeeting {

    private static final int NONE = -1;

    private final LineSet lines;

    /** For each slot of the table the first end that fell into it; ends are numbered 2 × line, and one more for the last. */
    private final int[] slots;

    /** The next end at the same place, by rising number. */
    private final int[] next;

    /** For the first end at a place how many there are, else 0. */
    private final int[] count;

    EndsMeeting(LineSet lines) {
        this.lines = lines;
        int ends = 2 * lines.lineCount();
        this.slots = new int[Integer.highestOneBit(Math.max(8, ends)) * 4];
        this.next = new int[ends];
        this.count = new int[ends];
        Arrays.fill(slots, NONE);
        Arrays.fill(next, NONE);
        int[] last = new int[ends];
        for (int end = 0; end < ends; end++) {
            int first = firstAt(end);
            if (first != end) {
                next[last[first]] = end;
            }
            last[first] = end;
            count[first]++;
        }
    }

    LineNodes nodes(int leastEnds) {
        LineNodes.Builder nodes = new LineNodes.Builder();
        for (int first = 0; first < count.length; first++) {
            if (count[first] < Math.max(1, leastEnds)) {
                continue;
            }
            nodes.node(lines.eastM(vertex(first)), lines.northM(vertex(first)));
            for (int end = first; end != NONE; end = next[end]) {
                nodes.touch(end >> 1, lines.chainageM(vertex(end)));
            }
        }
        return nodes.build();
    }

    private int vertex(int end) {
        return (end & 1) == 0 ? lines.firstVertex(end >> 1) : lines.endVertex(end >> 1) - 1;
    }

    private int firstAt(int end) {
        double east = lines.eastM(vertex(end));
        double north = lines.northM(vertex(end));
        int slot = hash(east, north) & (slots.length - 1);
        while (slots[slot] != NONE) {
            int there = vertex(slots[slot]);
            if (lines.eastM(there) == east && lines.northM(there) == north) {
                return slots[slot];
            }
            slot = (slot + 1) & (slots.length - 1);
        }
        slots[slot] = end;
        return end;
    }

    private static int hash(double east, double north) {
        long mixed = Double.doubleToRawLongBits(east) * 0x9E3779B97F4A7C15L;
        mixed = (mixed ^ (mixed >>> 32)) + Double.doubleToRawLongBits(north);
        mixed *= 0x94D049BB133111EBL;
        return (int) (mixed >>> 32);
    }
}
