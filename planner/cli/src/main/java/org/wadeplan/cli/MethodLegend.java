package org.wadeplan.cli;

import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.planner.round.Round;

/** What the ids of methods stand for, said once above a table. */
final class MethodLegend {

    private MethodLegend() {}

    /** {@code EFISH Electric fishing, one pass; TRAP …}: each id once, with the label of methods.csv. */
    static String of(Round round, Stream<String> methods) {
        return methods.collect(Collectors.toCollection(TreeSet::new)).stream()
                .flatMap(id -> round.method(id).stream())
                .map(method -> method.id() + " " + method.label())
                .collect(Collectors.joining("; "));
    }
}
