package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.CellText;
import org.wadeplan.planner.method.ValueType;
import org.wadeplan.planner.method.space.Box;
import org.wadeplan.planner.method.space.Holes;
import org.wadeplan.planner.method.space.TableSpace;

/** Ways to put a table right, tried out before they are suggested. */
final class Mends {

    private static final int MOST_WIDENINGS = 2;
    private static final int MOST_CELLS = 6;

    private final AuditedTable audited;
    private final TableSpace space;
    private final List<Box> boxes;

    Mends(AuditedTable audited) {
        this.audited = audited;
        this.space = audited.space();
        this.boxes = audited.boxes();
    }

    /** For cases without a rule: widen a rule that stands beside them, or add one. */
    List<String> ofGap(Box gap) {
        List<String> mends = new ArrayList<>();
        for (int rule = 0; rule < boxes.size() && mends.size() < MOST_WIDENINGS; rule++) {
            widening(rule, gap).ifPresent(mends::add);
        }
        String cells = IntStream.range(0, audited.width())
                .mapToObj(column -> CellText.of(space.test(gap, column)))
                .collect(Collectors.joining(" | "));
        List<Integer> beside = beside(gap);
        mends.add((mends.isEmpty() ? "add a rule: " : "or add a rule: ")
                + cells
                + (beside.isEmpty()
                        ? "; which output it gives is yours to decide"
                        : "; which output it gives is yours to decide (beside it stand "
                                + RuleList.words(audited.numbers(beside)) + ": "
                                + RuleList.joined(audited.results(beside)) + ")"));
        return List.copyOf(mends);
    }

    /** A rule that holds the gap in every column but one, where it ends at the gap; and runs into no other rule there. */
    private Optional<String> widening(int rule, Box gap) {
        return besideIn(rule, gap)
                .filter(column -> holdsElsewhere(rule, gap, column))
                .filter(column -> {
                    Box added = space.moved(boxes.get(rule), column, gap);
                    return IntStream.range(0, boxes.size())
                            .noneMatch(
                                    other -> other != rule && boxes.get(other).intersects(added));
                })
                .map(column -> "in rule " + audited.rule(rule).number() + " ("
                        + audited.result(audited.rule(rule)) + "), "
                        + change(rule, column, space.widened(boxes.get(rule), column, gap))
                        + ", if that is what it should give there");
    }

    private boolean holdsElsewhere(int rule, Box gap, int column) {
        return IntStream.range(0, audited.width())
                .allMatch(other -> other == column || boxes.get(rule).coversIn(other, gap));
    }

    /** Rules that share the gap's cases but for one column of numbers, and end at the gap in that one. */
    private List<Integer> beside(Box gap) {
        return IntStream.range(0, boxes.size())
                .filter(rule -> besideIn(rule, gap)
                        .filter(column -> audited.input(column).type() == ValueType.NUMBER)
                        .isPresent())
                .boxed()
                .toList();
    }

    private Optional<Integer> besideIn(int rule, Box gap) {
        Box box = boxes.get(rule);
        List<Integer> apart = IntStream.range(0, audited.width())
                .filter(column -> !box.meetsIn(column, gap))
                .boxed()
                .toList();
        return apart.size() == 1
                        && !box.isVoid()
                        && space.isOneStretch(space.widened(box, apart.get(0), gap), apart.get(0))
                ? Optional.of(apart.get(0))
                : Optional.empty();
    }

    /** For rules that cut each other: draw one side back in the column where they meet. */
    List<String> ofCut(Overlaps.Meeting meeting, int column) {
        List<List<Integer>> sides = meeting.rules().size() < meeting.others().size()
                ? List.of(meeting.rules(), meeting.others())
                : List.of(meeting.others(), meeting.rules());
        List<String> mends = new ArrayList<>();
        for (List<Integer> side : sides) {
            drawnBack(side, meeting.cause(), column, mends.isEmpty()).ifPresent(mends::add);
        }
        return List.copyOf(mends);
    }

    private Optional<String> drawnBack(List<Integer> side, Box cause, int column, boolean first) {
        List<Box> changed = new ArrayList<>(boxes);
        side.forEach(rule -> changed.set(rule, space.without(boxes.get(rule), column, cause)));
        boolean plain = side.stream().allMatch(rule -> space.isOneStretch(changed.get(rule), column));
        if (!plain || side.size() > MOST_CELLS) {
            return Optional.empty();
        }
        Map<String, List<Integer>> rulesByChange = new LinkedHashMap<>();
        side.forEach(rule -> rulesByChange
                .computeIfAbsent(change(rule, column, changed.get(rule)), words -> new ArrayList<>())
                .add(audited.rule(rule).number()));
        String changes = rulesByChange.entrySet().stream()
                .map(entry -> "in " + RuleList.words(entry.getValue()) + " " + entry.getKey())
                .collect(Collectors.joining("; "));
        return Optional.of((first ? "" : "or ") + changes + opened(side, cause, column, changed));
    }

    /** What would then be without a rule; blank where nothing would. */
    private String opened(List<Integer> side, Box cause, int column, List<Box> changed) {
        for (int rule : side) {
            Box given = space.moved(boxes.get(rule), column, cause);
            List<Box> holes = Holes.of(space, given, changed, List.of()).boxes();
            if (!holes.isEmpty()) {
                Box hole = holes.get(0);
                String where = IntStream.range(0, audited.width())
                        .filter(at -> at == column || !hole.sameIn(at, given))
                        .mapToObj(at -> audited.part(hole, at, false).words())
                        .collect(Collectors.joining(", "));
                return "; that leaves cases without a rule (" + where + (holes.size() > 1 ? ", and others" : "")
                        + "), which then need one of their own";
            }
        }
        return "";
    }

    /** {@code write max_depth_m as (0.8..2] in place of (0.7..2.0]} */
    private String change(int rule, int column, Box changed) {
        return "write " + audited.input(column).name() + " as " + CellText.of(space.test(changed, column))
                + " in place of " + audited.cellText(rule, column);
    }

    /** For a rule that lies inside others. */
    List<String> ofInside(Overlaps.Meeting meeting) {
        String inner = RuleList.words(audited.numbers(meeting.rules()));
        String outer = RuleList.words(audited.numbers(meeting.others()));
        return meeting.same()
                ? List.of("delete the rules that lie inside the others")
                : List.of("decide which is right where " + inner + " and " + outer
                        + " meet; then cut those cases out of the other, or delete the one that is wrong");
    }
}
