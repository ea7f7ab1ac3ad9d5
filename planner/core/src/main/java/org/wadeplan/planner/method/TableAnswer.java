package org.wadeplan.planner.method;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a table says of a case in which everything that matters is known. */
public sealed interface TableAnswer {

    /** One rule answers. */
    record Found(TableRule rule) implements TableAnswer {}

    /** No rule matches. */
    record Nothing() implements TableAnswer {}

    /** Several rules match, and the hit policy allows one. */
    record Contradiction(List<TableRule> rules) implements TableAnswer {}

    /** Several rules answer, in this order. */
    record Listed(List<TableRule> rules) implements TableAnswer {}

    /**
     * Puts the rules that match through the table's hit policy.
     *
     * @param matching in the order of the table
     */
    static TableAnswer of(DecisionTable table, List<TableRule> matching) {
        if (matching.isEmpty()) {
            return new Nothing();
        }
        List<TableRule> ordered = table.inOrder(matching);
        boolean agreed = matching.size() == 1
                || (table.hitPolicy() == HitPolicy.ANY
                        && matching.stream().map(TableRule::outputs).distinct().count() == 1);
        if (agreed || table.hitPolicy().ranks()) {
            return new Found(ordered.get(0));
        }
        return table.hitPolicy().lists() ? new Listed(ordered) : new Contradiction(matching);
    }

    /** The rules behind the answer, in their order. */
    default List<TableRule> rules() {
        return fold(List::of, List::of, rules -> rules, rules -> rules);
    }

    default <R> R fold(
            Function<TableRule, R> found,
            Supplier<R> nothing,
            Function<List<TableRule>, R> contradiction,
            Function<List<TableRule>, R> listed) {
        if (this instanceof Found it) {
            return found.apply(it.rule());
        }
        if (this instanceof Contradiction it) {
            return contradiction.apply(it.rules());
        }
        if (this instanceof Listed it) {
            return listed.apply(it.rules());
        }
        return nothing.get();
    }
}
