package org.wadeplan.planner.method.space;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/** Asks of every case in a box which of some ranked boxes holds it first. Exact, by halving as {@link CoverSearch} does. */
public final class RankedSearch {

    private static final int MOST_PIECES = 200_000;

    private final List<Ranked> ranked;
    private final Box[] boxes;

    /**
     * A box with its rank by its place in a list.
     *
     * @param good whether it is right for this box to come first
     */
    public record Ranked(Box box, boolean good) {}

    private static final class Piece {
        private final Box box;
        private final int[] meeting;

        Piece(Box box, int[] meeting) {
            this.box = box;
            this.meeting = meeting;
        }
    }

    /**
     * Makes a search.
     *
     * @param ranked first the one that goes before the others
     */
    public RankedSearch(List<Ranked> ranked) {
        this.ranked = List.copyOf(ranked);
        this.boxes = ranked.stream().map(Ranked::box).toArray(Box[]::new);
    }

    /** Whether each case lies in some ranked box, the first of which is good; false too where that took too long to see. */
    public boolean firstIsAlwaysGood(Box whole) {
        int[] all = new int[boxes.length];
        Arrays.setAll(all, i -> i);
        Deque<Piece> open = new ArrayDeque<>();
        open.push(new Piece(whole, upToFirstHolder(whole, all)));
        for (int pieces = 0; !open.isEmpty(); pieces++) {
            Piece piece = open.pop();
            int[] meeting = piece.meeting;
            boolean held = meeting.length > 0 && boxes[meeting[meeting.length - 1]].covers(piece.box);
            if (held && Arrays.stream(meeting).allMatch(i -> ranked.get(i).good())) {
                continue;
            }
            boolean hopeless =
                    Arrays.stream(meeting).noneMatch(i -> ranked.get(i).good());
            if (hopeless || (held && meeting.length == 1) || pieces > MOST_PIECES) {
                return false;
            }
            Cut cut = Cut.best(piece.box, boxes, meeting);
            push(open, piece.box.with(cut.column(), cut.upper(piece.box)), meeting);
            push(open, piece.box.with(cut.column(), cut.lower(piece.box)), meeting);
        }
        return true;
    }

    private void push(Deque<Piece> open, Box box, int[] candidates) {
        if (!box.isVoid()) {
            open.push(new Piece(box, upToFirstHolder(box, candidates)));
        }
    }

    /** Those that meet the box, in rank, up to the first that holds all of it: the rest never come first. */
    private int[] upToFirstHolder(Box box, int[] candidates) {
        int[] meeting = new int[candidates.length];
        int size = 0;
        for (int candidate : candidates) {
            if (boxes[candidate].intersects(box)) {
                meeting[size++] = candidate;
                if (boxes[candidate].covers(box)) {
                    break;
                }
            }
        }
        return Arrays.copyOf(meeting, size);
    }
}
