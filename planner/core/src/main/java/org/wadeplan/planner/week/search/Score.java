package org.wadeplan.planner.week.search;

import java.util.List;
import org.wadeplan.planner.round.Priority;

/** How good a week is: levels in whole numbers, each counting only where all before it are equal; less is better. */
// Arrays because the inner loop of the search reads them millions of times; nobody compares these records.
@SuppressWarnings("ArrayRecordComponent")
record Score(long[] levels) implements Comparable<Score> {

    static final int RESERVE_VISITS = 3;
    static final int DIRTY_TO_CLEAN = 4;
    static final int PUT_ASIDE = 5;
    static final int CREW_MINUTES = 6;
    static final int LATENESS = 7;
    static final int LEVELS = 8;

    static int unplacedLevel(Priority priority) {
        return switch (priority) {
            case A -> 0;
            case B -> 1;
            case C -> 2;
        };
    }

    @Override
    public int compareTo(Score other) {
        for (int i = 0; i < LEVELS; i++) {
            if (levels[i] != other.levels[i]) {
                return Long.compare(levels[i], other.levels[i]);
            }
        }
        return 0;
    }

    /** No worse in visits, and not much worse in the rest, where a step or a set put aside weighs as much as an hour. */
    boolean within(long minutes, Score other) {
        for (int i = 0; i < DIRTY_TO_CLEAN; i++) {
            if (levels[i] != other.levels[i]) {
                return levels[i] < other.levels[i];
            }
        }
        return weighedMin() <= other.weighedMin() + minutes;
    }

    private long weighedMin() {
        return levels[CREW_MINUTES] + 60 * (levels[DIRTY_TO_CLEAN] + levels[PUT_ASIDE]);
    }

    List<String> words() {
        return List.of(
                "Sites of priority A open to a visit and without a place: " + levels[0],
                "Sites of priority B open to a visit and without a place: " + levels[1],
                "Sites of priority C open to a visit and without a place: " + levels[2],
                "Parts of visits on reserve days: " + levels[RESERVE_VISITS],
                "Steps from an infested water to a cleaner one, by crews and kit sets: " + levels[DIRTY_TO_CLEAN],
                "Kit sets put aside dirty at the end of a crew-day: " + levels[PUT_ASIDE],
                "Travel, rinsing and cleaning, minutes: " + levels[CREW_MINUTES],
                "Days from the first day, summed over parts of visits: " + levels[LATENESS]);
    }
}
