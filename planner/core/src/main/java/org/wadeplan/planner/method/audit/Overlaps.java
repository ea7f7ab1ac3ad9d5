package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.space.Box;
import org.wadeplan.planner.method.space.TableSpace;

/** Every two rules that match one case together, gathered by what makes them meet. */
final class Overlaps {

    /** Enough for any table a person could mend. */
    private static final int MOST = 300_000;

    /**
     * Rules that meet for one reason.
     *
     * @param same whether both sides say the same
     * @param cause what both ask of the columns in which neither holds the other: it is there that they cut each other.
     *     It asks nothing where one rule lies inside the other
     * @param rules one side, by index
     * @param others the other side; each meets each of {@code rules}
     */
    record Meeting(boolean same, Box cause, List<Integer> rules, List<Integer> others) {}

    private record Reason(boolean same, Box cause) {}

    private final AuditedTable audited;
    private final List<List<Integer>> neighbours = new ArrayList<>();
    private final Map<Reason, Map<Integer, List<Integer>>> pairs = new LinkedHashMap<>();
    private int found;

    Overlaps(AuditedTable audited) {
        this.audited = audited;
        IntStream.range(0, audited.boxes().size()).forEach(i -> neighbours.add(new ArrayList<>()));
        for (int a = 0; a < audited.boxes().size(); a++) {
            if (!audited.boxes().get(a).isVoid()) {
                meet(a);
            }
        }
    }

    /** False where there were too many to keep. */
    boolean complete() {
        return found < MOST;
    }

    /** The rules that share a case with this one, by index, rising. */
    List<Integer> neighbours(int index) {
        return neighbours.get(index).stream().sorted().toList();
    }

    private void meet(int a) {
        Box box = audited.boxes().get(a);
        for (int b = a + 1; b < audited.boxes().size() && complete(); b++) {
            Box other = audited.boxes().get(b);
            if (other.intersects(box)) {
                found++;
                neighbours.get(a).add(b);
                neighbours.get(b).add(a);
                pairs.computeIfAbsent(
                                new Reason(audited.sameOutputs(a, b), cause(box, other)), reason -> new TreeMap<>())
                        .computeIfAbsent(a, first -> new ArrayList<>())
                        .add(b);
            }
        }
    }

    private Box cause(Box a, Box b) {
        TableSpace space = audited.space();
        Box both = a.intersect(b);
        Box cause = space.whole();
        for (int column = 0; column < audited.width(); column++) {
            if (!a.coversIn(column, b) && !b.coversIn(column, a)) {
                cause = space.moved(cause, column, both);
            }
        }
        return cause;
    }

    /**
     * The meetings, in the order in which they first stand in the table.
     *
     * @param leftOut rules whose meetings with rules that say the same are not asked for
     */
    List<Meeting> meetings(List<Integer> leftOut) {
        List<Meeting> meetings = new ArrayList<>();
        pairs.forEach((reason, byFirst) -> {
            Map<List<Integer>, List<Integer>> sides = new LinkedHashMap<>();
            byFirst.forEach((first, seconds) -> {
                List<Integer> others = seconds.stream()
                        .filter(second -> !reason.same || !(leftOut.contains(first) || leftOut.contains(second)))
                        .toList();
                sides.computeIfAbsent(others, key -> new ArrayList<>()).add(first);
            });
            sides.forEach((others, rules) -> {
                if (!others.isEmpty()) {
                    meetings.add(new Meeting(reason.same, reason.cause, List.copyOf(rules), others));
                }
            });
        });
        return meetings;
    }
}
