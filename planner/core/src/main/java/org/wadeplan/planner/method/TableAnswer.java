package org.wadeplan.planner.method;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a table says of a case in which everything that matters is known. */
sealed interface TableAnswer {

    record Found(TableRule rule) implements TableAnswer {}

    record Nothing() implements TableAnswer {}

    /** Several rules match, and the hit policy allows one. */
    record Contradiction(List<TableRule> rules) implements TableAnswer {}

    /** Puts the rules that match through the hit policy. */
    static TableAnswer of(HitPolicy policy, List<TableRule> matching) {
        if (matching.isEmpty()) {
            return new Nothing();
        }
        boolean agreed =
                switch (policy) {
                    case UNIQUE -> matching.size() == 1;
                    case ANY ->
                        matching.stream().map(TableRule::outputs).distinct().count() == 1;
                    case FIRST -> true;
                };
        return agreed ? new Found(matching.get(0)) : new Contradiction(matching);
    }

    default <R> R fold(Function<TableRule, R> found, Supplier<R> nothing, Function<List<TableRule>, R> contradiction) {
        if (this instanceof Found it) {
            return found.apply(it.rule());
        }
        if (this instanceof Contradiction it) {
            return contradiction.apply(it.rules());
        }
        return nothing.get();
    }
}
