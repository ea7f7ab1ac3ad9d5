package org.wadeplan.planner.method.space;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.Outcome;
import org.wadeplan.planner.method.TableAnswer;
import org.wadeplan.planner.method.TableRule;

/** The cases in which two tables come to different outcomes. Exact, by halving until every rule holds a piece or misses it. */
public final class Differences {

    private static final int MOST_PIECES = 400_000;
    private static final int MOST_FOUND = 4_000;

    /** Cases that come out one way in the first table and another way in the second. */
    public record Difference(Box box, String before, String after) {}

    /**
     * What was found.
     *
     * @param complete false where there is more
     */
    public record Found(List<Difference> differences, boolean complete) {}

    private static final class Piece {
        private final Box box;
        private final int[] meeting;

        Piece(Box box, int[] meeting) {
            this.box = box;
            this.meeting = meeting;
        }
    }

    private final DecisionTable before;
    private final DecisionTable after;
    private final Box[] boxes;
    private final Map<List<String>, List<Box>> found = new LinkedHashMap<>();
    private int count;

    private Differences(TableSpace space, DecisionTable before, DecisionTable after) {
        this.before = before;
        this.after = after;
        List<Box> all = new ArrayList<>(space.rules(before));
        all.addAll(space.rules(after));
        this.boxes = all.toArray(Box[]::new);
    }

    /**
     * Holds two tables against each other.
     *
     * @param space made of both tables
     */
    public static Found of(TableSpace space, DecisionTable before, DecisionTable after) {
        Differences search = new Differences(space, before, after);
        boolean complete = search.run(space.whole());
        List<Difference> differences = new ArrayList<>();
        search.found.forEach((outcomes, pieces) -> joined(space, pieces)
                .forEach(box -> differences.add(new Difference(box, outcomes.get(0), outcomes.get(1)))));
        return new Found(List.copyOf(differences), complete);
    }

    private boolean run(Box whole) {
        int[] all = new int[boxes.length];
        Arrays.setAll(all, i -> i);
        Deque<Piece> open = new ArrayDeque<>();
        open.push(new Piece(whole, meeting(whole, all)));
        int pieces = 0;
        while (!open.isEmpty()) {
            if (++pieces > MOST_PIECES || count > MOST_FOUND) {
                return false;
            }
            Piece piece = open.pop();
            int[] parting = Arrays.stream(piece.meeting)
                    .filter(rule -> !boxes[rule].covers(piece.box))
                    .toArray();
            if (parting.length == 0) {
                compare(piece);
            } else {
                Cut cut = Cut.best(piece.box, boxes, parting);
                push(open, piece.box.with(cut.column(), cut.upper(piece.box)), piece.meeting);
                push(open, piece.box.with(cut.column(), cut.lower(piece.box)), piece.meeting);
            }
        }
        return true;
    }

    private void push(Deque<Piece> open, Box box, int[] candidates) {
        if (!box.isVoid()) {
            open.push(new Piece(box, meeting(box, candidates)));
        }
    }

    private int[] meeting(Box box, int[] candidates) {
        return Arrays.stream(candidates)
                .filter(rule -> boxes[rule].intersects(box))
                .toArray();
    }

    private void compare(Piece piece) {
        int size = before.rules().size();
        List<TableRule> old = new ArrayList<>();
        List<TableRule> now = new ArrayList<>();
        for (int rule : piece.meeting) {
            if (rule < size) {
                old.add(before.rules().get(rule));
            } else {
                now.add(after.rules().get(rule - size));
            }
        }
        String was = words(before, TableAnswer.of(before, old));
        String is = words(after, TableAnswer.of(after, now));
        if (!was.equals(is)) {
            count++;
            found.computeIfAbsent(List.of(was, is), key -> new ArrayList<>()).add(piece.box);
        }
    }

    /** Which rules clash is the audit's business; here it would only part the regions. */
    private static String words(DecisionTable table, TableAnswer answer) {
        return answer instanceof TableAnswer.Contradiction
                ? "rules clash"
                : Outcome.of(table, answer).words();
    }

    /** Pieces that differ in one column only become one, as long as there are any. */
    private static List<Box> joined(TableSpace space, List<Box> pieces) {
        List<Box> boxes = new ArrayList<>(pieces);
        boolean again = boxes.size() > 1;
        while (again) {
            again = false;
            for (int i = 0; i < boxes.size(); i++) {
                for (int j = boxes.size() - 1; j > i; j--) {
                    int column = onlyDifference(boxes.get(i), boxes.get(j));
                    if (column >= 0) {
                        boxes.set(i, space.widened(boxes.get(i), column, boxes.remove(j)));
                        again = true;
                    }
                }
            }
        }
        return boxes;
    }

    /** The one column in which two boxes differ; -1 where there are more. */
    private static int onlyDifference(Box a, Box b) {
        int only = -1;
        for (int column = 0; column < a.width(); column++) {
            if (!a.sameIn(column, b)) {
                if (only >= 0) {
                    return -1;
                }
                only = column;
            }
        }
        return Math.max(only, 0);
    }
}
