package org.wadeplan.planner.method.space;

import java.util.ArrayList;
import java.util.List;

/**
 * The cases that no box covers, as few and as large boxes: each is grown until a covering box stops it on every side, and
 * none is left that others hold already. They may overlap one another.
 */
public final class Holes {

    /** Enough to mend a table by; beyond it a table needs another author rather than a longer list. */
    private static final int MOST = 200;

    private final TableSpace space;
    private final List<Box> cover;
    private final List<Box> found = new ArrayList<>();
    private boolean more;

    private Holes(TableSpace space, List<Box> cover) {
        this.space = space;
        this.cover = cover;
    }

    /**
     * The boxes that were found.
     *
     * @param boxes every case that no box covers lies in one of them
     * @param complete false where there are more than are listed
     */
    public record Listed(List<Box> boxes, boolean complete) {}

    /**
     * Finds the holes in one box.
     *
     * @param first boxes known to be holes, to be grown before any other
     */
    public static Listed of(TableSpace space, Box within, List<Box> cover, List<Box> first) {
        Holes holes = new Holes(
                space, cover.stream().filter(box -> box.intersects(within)).toList());
        first.forEach(box -> holes.add(box, within));
        CoverSearch search = new CoverSearch(holes.cover);
        search.holes(within, hole -> holes.add(hole, within));
        return new Listed(holes.needed(), !holes.more && !search.gaveUp());
    }

    private boolean add(Box hole, Box within) {
        if (found.stream().noneMatch(box -> box.covers(hole))) {
            if (found.size() >= MOST) {
                more = true;
                return false;
            }
            found.add(grown(hole, within));
        }
        return true;
    }

    /** Grown column by column, once from the first and once from the last; the one that asks less is kept. */
    private Box grown(Box hole, Box within) {
        Box forwards = hole;
        Box backwards = hole;
        for (int i = 0; i < hole.width(); i++) {
            forwards = grownIn(forwards, i, within);
            backwards = grownIn(backwards, hole.width() - 1 - i, within);
        }
        return free(backwards, within) >= free(forwards, within) ? backwards : forwards;
    }

    private static int free(Box box, Box within) {
        int free = 0;
        for (int column = 0; column < box.width(); column++) {
            free += box.sameIn(column, within) ? 1 : 0;
        }
        return free;
    }

    /** As far as no covering box is met; among numbers without leaping over one. */
    private Box grownIn(Box hole, int column, Box within) {
        Box stretched = hole.with(column, within.runs(column));
        int[] open = within.runs(column);
        for (Box box : cover) {
            if (box.intersects(stretched)) {
                open = Runs.minus(open, box.runs(column));
            }
        }
        if (!space.isNumber(column)) {
            return hole.with(column, open);
        }
        int[] mine = hole.runs(column);
        int[] grown = Runs.NONE;
        for (int i = 0; i < open.length; i += 2) {
            int[] stretch = Runs.of(open[i], open[i + 1]);
            grown = Runs.intersects(stretch, mine) ? Runs.union(grown, stretch) : grown;
        }
        return hole.with(column, grown);
    }

    /** Leaves out what the others hold together. */
    private List<Box> needed() {
        List<Box> kept = new ArrayList<>(found);
        for (int i = kept.size() - 1; i >= 0; i--) {
            List<Box> others = new ArrayList<>(kept);
            Box box = others.remove(i);
            CoverSearch search = new CoverSearch(others, 2_000_000);
            if (search.firstHole(box).isEmpty() && !search.gaveUp()) {
                kept = others;
            }
        }
        return List.copyOf(kept);
    }
}
