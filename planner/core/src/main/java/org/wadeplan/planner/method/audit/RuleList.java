package org.wadeplan.planner.method.audit;

import java.util.List;
import java.util.stream.Collectors;

/** Rules by number, as one says them. */
final class RuleList {

    private static final int MOST_NAMED = 12;

    private RuleList() {}

    /** {@code rule 5}, {@code rules 5, 6 and 7}, {@code rules 1, 2 … and 40 more}. */
    static String words(List<Integer> numbers) {
        return (numbers.size() == 1 ? "rule " : "rules ")
                + joined(numbers.stream().map(String::valueOf).toList());
    }

    /** {@code EFISH, TRAP and DEFER} */
    static String joined(List<String> parts) {
        if (parts.size() > MOST_NAMED) {
            return String.join(", ", parts.subList(0, MOST_NAMED)) + " and " + (parts.size() - MOST_NAMED) + " more";
        }
        String last = parts.get(parts.size() - 1);
        String others = parts.stream().limit(parts.size() - 1L).collect(Collectors.joining(", "));
        return others.isEmpty() ? last : others + " and " + last;
    }
}
