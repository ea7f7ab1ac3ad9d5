package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;

/** Small random tables with every form of unary test. */
public final class RandomTables {

    private RandomTables() {}

    public static Arbitrary<DecisionTable> tables(Arbitrary<HitPolicy> policies) {
        Arbitrary<String> limits = Combinators.combine(
                        Arbitraries.of("<", "<=", ">", ">=", "", "not"), Arbitraries.of(1, 2, 3))
                .as((sign, limit) -> sign.equals("not") ? "not(" + limit + ")" : sign + limit);
        Arbitrary<String> lists = Arbitraries.of(
                "[1..2]", "(1..2]", "[1..3)", "]2..3[", "(1..3)", "[2..3]", "1, 3", "<1, >2", "not(<1, 3)");
        Arbitrary<String> number =
                Arbitraries.frequencyOf(Tuple.of(2, Arbitraries.just("-")), Tuple.of(4, limits), Tuple.of(3, lists));
        Arbitrary<String> word = Arbitraries.of("-", "-", "\"mud\"", "\"sand\"", "not(\"mud\")", "\"mud\",\"sand\"");
        Arbitrary<String> truth = Arbitraries.of("-", "-", "true", "false");
        Arbitrary<String> rule = Combinators.combine(number, number, word, truth, Arbitraries.of("A", "B", "C"))
                .as((a, b, c, d, e) -> String.join("|", a, b, c, d, e));
        return Combinators.combine(policies, rule.list().ofMinSize(1).ofMaxSize(7))
                .as((policy, rules) -> SmallTable.of(policy, new ArrayList<>(rules).toArray(String[]::new)));
    }

    /** Every possible case of these tables, as far as their limits can tell cases apart. */
    public static List<Map<String, CaseValue>> grid() {
        return SmallTable.grid();
    }
}
