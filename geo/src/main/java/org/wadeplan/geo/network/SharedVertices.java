package org.wadeplan.geo.network;

import java.util.Arrays;
import org.wadeplan.geo.lines.LineSet;

/**
 * The places of a set of lines that can be nodes without moving anything: every line's two ends, and every vertex that two
 * lines or more have in common, to the last digit.
 *
 * <p>Two passes over the vertices with one bit for each hash value sift out the few that may be shared, so that memory
 * stays far below that of the vertices themselves. Places are numbered by the first vertex that stands there.
 */
final class SharedVertices {

    private final LineSet lines;
    private int placeCount;
    private int[] memberStart = new int[1];
    private int[] memberVertex = new int[0];
    private int[] memberLine = new int[0];
    private final int[] firstPlace;
    private final int[] lastPlace;

    private SharedVertices(LineSet lines) {
        this.lines = lines;
        this.firstPlace = new int[lines.lineCount()];
        this.lastPlace = new int[lines.lineCount()];
    }

    static SharedVertices of(LineSet lines) {
        SharedVertices shared = new SharedVertices(lines);
        shared.gather(new Sieve(lines));
        return shared;
    }

    int placeCount() {
        return placeCount;
    }

    int memberStart(int place) {
        return memberStart[place];
    }

    int memberEnd(int place) {
        return memberStart[place + 1];
    }

    /** Number of a vertex that stands at a place. */
    int vertex(int member) {
        return memberVertex[member];
    }

    /** The line that this vertex belongs to. */
    int line(int member) {
        return memberLine[member];
    }

    double eastM(int place) {
        return lines.eastM(memberVertex[memberStart[place]]);
    }

    double northM(int place) {
        return lines.northM(memberVertex[memberStart[place]]);
    }

    /** The place of an end: ends are numbered two a line, first vertex before last. */
    int placeOfEnd(int end) {
        return (end & 1) == 0 ? firstPlace[end >> 1] : lastPlace[end >> 1];
    }

    /** Whether nothing but this one end stands at the place. */
    boolean isLoose(int place) {
        return memberStart[place + 1] - memberStart[place] == 1;
    }

    /** Whether a line has a vertex at the place. */
    boolean holds(int place, int line) {
        for (int member = memberStart[place]; member < memberStart[place + 1]; member++) {
            if (memberLine[member] == line) {
                return true;
            }
        }
        return false;
    }

    private boolean isEnd(int vertex, int line) {
        return vertex == lines.firstVertex(line) || vertex == lines.endVertex(line) - 1;
    }

    private void gather(Sieve sieve) {
        int[] candidate = new int[2 * lines.lineCount() + 16];
        int[] ofLine = new int[candidate.length];
        int count = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            for (int vertex = lines.firstVertex(line); vertex < lines.endVertex(line); vertex++) {
                if (isEnd(vertex, line) || sieve.mayBeShared(vertex)) {
                    if (count == candidate.length) {
                        candidate = Arrays.copyOf(candidate, count + count / 2);
                        ofLine = Arrays.copyOf(ofLine, candidate.length);
                    }
                    candidate[count] = vertex;
                    ofLine[count++] = line;
                }
            }
        }
        group(candidate, ofLine, count);
    }

    private void group(int[] candidate, int[] ofLine, int count) {
        int[] group = groups(candidate, count);
        int groups = 0;
        for (int i = 0; i < count; i++) {
            groups = Math.max(groups, group[i] + 1);
        }
        int[] place = places(candidate, ofLine, count, group, groups);
        memberStart = new int[placeCount + 1];
        for (int i = 0; i < count; i++) {
            if (place[group[i]] >= 0) {
                memberStart[place[group[i]] + 1]++;
            }
        }
        for (int i = 0; i < placeCount; i++) {
            memberStart[i + 1] += memberStart[i];
        }
        fill(candidate, ofLine, count, group, place);
    }

    private void fill(int[] candidate, int[] ofLine, int count, int[] group, int[] place) {
        int[] next = Arrays.copyOf(memberStart, placeCount + 1);
        memberVertex = new int[memberStart[placeCount]];
        memberLine = new int[memberStart[placeCount]];
        for (int i = 0; i < count; i++) {
            int at = place[group[i]];
            if (at < 0) {
                continue;
            }
            memberVertex[next[at]] = candidate[i];
            memberLine[next[at]++] = ofLine[i];
            if (candidate[i] == lines.firstVertex(ofLine[i])) {
                firstPlace[ofLine[i]] = at;
            }
            if (candidate[i] == lines.endVertex(ofLine[i]) - 1) {
                lastPlace[ofLine[i]] = at;
            }
        }
    }

    /** Which candidates stand at the same place, by a number for each place in order of appearance. */
    private int[] groups(int[] candidate, int count) {
        int mask = Math.max(16, Integer.highestOneBit(Math.max(1, count)) * 4) - 1;
        int[] table = new int[mask + 1];
        Arrays.fill(table, -1);
        int[] group = new int[count];
        int groups = 0;
        for (int i = 0; i < count; i++) {
            int slot = (int) Sieve.hash(lines, candidate[i]) & mask;
            while (table[slot] >= 0 && !samePlace(candidate[table[slot]], candidate[i])) {
                slot = (slot + 1) & mask;
            }
            if (table[slot] < 0) {
                table[slot] = i;
                group[i] = groups++;
            } else {
                group[i] = group[table[slot]];
            }
        }
        return group;
    }

    /** Numbers the groups that are nodes: those with an end, and those of two lines; -1 for the rest. */
    private int[] places(int[] candidate, int[] ofLine, int count, int[] group, int groups) {
        int[] firstLine = new int[groups];
        Arrays.fill(firstLine, -1);
        int[] place = new int[groups];
        for (int i = 0; i < count; i++) {
            int own = group[i];
            if (isEnd(candidate[i], ofLine[i]) || (firstLine[own] >= 0 && firstLine[own] != ofLine[i])) {
                place[own] = 1;
            }
            firstLine[own] = firstLine[own] < 0 ? ofLine[i] : firstLine[own];
        }
        for (int own = 0; own < groups; own++) {
            place[own] = place[own] > 0 ? placeCount++ : -1;
        }
        return place;
    }

    private boolean samePlace(int a, int b) {
        return lines.eastM(a) == lines.eastM(b) && lines.northM(a) == lines.northM(b);
    }

    /** Mixes both coordinates; adding 0.0 makes minus zero the same as zero. Constants: splitmix64. */
    static long mixed(double eastM, double northM) {
        long mixed = Double.doubleToRawLongBits(eastM + 0.0) * 0x9E3779B97F4A7C15L
                + Double.doubleToRawLongBits(northM + 0.0);
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    /** Tells quickly that a vertex is surely not shared. */
    private static final class Sieve {

        private final LineSet lines;
        private final int mask;
        private final long[] twice;

        Sieve(LineSet lines) {
            this.lines = lines;
            long wanted = Math.min(1L << 30, Math.max(1024, 4L * lines.vertexCount()));
            this.mask = (int) Long.highestOneBit(wanted) - 1;
            this.twice = new long[(mask >> 6) + 1];
            long[] once = new long[twice.length];
            for (int vertex = 0; vertex < lines.vertexCount(); vertex++) {
                int bit = (int) hash(lines, vertex) & mask;
                long set = 1L << bit;
                if ((once[bit >> 6] & set) != 0) {
                    twice[bit >> 6] |= set;
                }
                once[bit >> 6] |= set;
            }
        }

        boolean mayBeShared(int vertex) {
            int bit = (int) hash(lines, vertex) & mask;
            return (twice[bit >> 6] & (1L << bit)) != 0;
        }

        static long hash(LineSet lines, int vertex) {
            return mixed(lines.eastM(vertex), lines.northM(vertex));
        }
    }
}
