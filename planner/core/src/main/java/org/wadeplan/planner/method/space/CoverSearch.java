package org.wadeplan.planner.method.space;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds the part of a box that no other box covers. The box is halved, at the limit that parts the other boxes best,
 * until each piece lies inside one of them or meets none. Exact; the order of the boxes does not matter.
 */
public final class CoverSearch {

    /** Looks at one column of one box before the search gives up: some seconds on one core. */
    private static final long MOST_LOOKS = 600_000_000L;

    private final Box[] cover;
    private long looksLeft;

    /** A piece of the box, and the covering boxes that meet it. */
    private static final class Piece {
        private final Box box;
        private final int[] meeting;

        Piece(Box box, int[] meeting) {
            this.box = box;
            this.meeting = meeting;
        }
    }

    public CoverSearch(List<Box> cover) {
        this(cover, MOST_LOOKS);
    }

    CoverSearch(List<Box> cover, long mostLooks) {
        this.cover = cover.toArray(Box[]::new);
        this.looksLeft = mostLooks;
    }

    /** Whether the search was given up, so that uncovered pieces may be missing. */
    public boolean gaveUp() {
        return looksLeft < 0;
    }

    /** Some piece of the box that nothing covers; empty where all of it is covered. */
    public Optional<Box> firstHole(Box whole) {
        Box[] found = new Box[1];
        holes(whole, hole -> {
            found[0] = hole;
            return false;
        });
        return Optional.ofNullable(found[0]);
    }

    /**
     * Hands over pieces that nothing covers until all of them were seen. No two overlap.
     *
     * @param goOn gets each piece; false ends the search
     */
    public void holes(Box whole, Predicate<Box> goOn) {
        Deque<Piece> open = new ArrayDeque<>();
        push(open, whole, allMeeting(whole));
        while (!open.isEmpty() && looksLeft >= 0) {
            Piece piece = open.pop();
            if (piece.meeting.length == 0) {
                if (!goOn.test(piece.box)) {
                    return;
                }
                continue;
            }
            Cut cut = Cut.best(piece.box, cover, piece.meeting);
            looksLeft -= (long) piece.meeting.length * piece.box.width() * 4;
            push(open, piece.box.with(cut.column(), cut.upper(piece.box)), piece.meeting);
            push(open, piece.box.with(cut.column(), cut.lower(piece.box)), piece.meeting);
        }
    }

    private int[] allMeeting(Box whole) {
        int[] all = new int[cover.length];
        Arrays.setAll(all, i -> i);
        return whole.isVoid() ? Runs.NONE : all;
    }

    /** Keeps the piece for later unless one covering box holds all of it. */
    private void push(Deque<Piece> open, Box box, int[] candidates) {
        if (box.isVoid()) {
            return;
        }
        int[] meeting = new int[candidates.length];
        int size = 0;
        for (int candidate : candidates) {
            Box other = cover[candidate];
            if (other.intersects(box)) {
                if (other.covers(box)) {
                    return;
                }
                meeting[size++] = candidate;
            }
        }
        looksLeft -= (long) candidates.length * 2;
        open.push(new Piece(box, Arrays.copyOf(meeting, size)));
    }
}
