package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitPer;
import org.wadeplan.planner.round.Round;

/** What to carry where the method is only settled at the water: enough of every kind for each method that may come out. */
public final class KitForAll {

    private KitForAll() {}

    /** One kind, and the most of it that one of the methods needs. */
    public record Line(String kind, double quantity, KitPer per, List<String> methods) {}

    private record Kind(String kind, KitPer per) {}

    /** By kind; the parts of one method share their kit, so that the larger need counts. */
    public static List<Line> of(Round round, List<String> methods) {
        Map<String, Line> lines = new TreeMap<>();
        for (KitNeed need : round.store().needs()) {
            if (methods.contains(need.method())) {
                Kind kind = new Kind(need.kind(), need.per());
                lines.merge(
                        kind.kind() + " " + kind.per(),
                        new Line(need.kind(), need.quantity() + need.spare(), need.per(), List.of(need.method())),
                        KitForAll::larger);
            }
        }
        return List.copyOf(lines.values());
    }

    private static Line larger(Line a, Line b) {
        List<String> methods = new ArrayList<>(a.methods());
        b.methods().stream().filter(method -> !methods.contains(method)).forEach(methods::add);
        return new Line(a.kind(), Math.max(a.quantity(), b.quantity()), a.per(), List.copyOf(methods));
    }
}
