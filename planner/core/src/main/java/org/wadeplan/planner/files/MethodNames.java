package org.wadeplan.planner.files;

import static org.wadeplan.geo.problem.Severity.ERROR;
import static org.wadeplan.geo.problem.Severity.WARNING;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.MethodTableCheck;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;

/** The decision table, the methods, their parts, their kit and the permits must speak of the same methods. */
final class MethodNames {

    private final RoundTables tables;
    private final List<Problem> problems = new ArrayList<>();

    private MethodNames(RoundTables tables) {
        this.tables = tables;
    }

    /** @param decisions with its own problems: of a table with faults it is not clear what it gives */
    static List<Problem> check(RoundTables tables, Checked<DecisionTable> decisions) {
        MethodNames names = new MethodNames(tables);
        KnownIds methods = KnownIds.of("a method", tables.methods(), "method");
        names.problems.addAll(methods.check(ERROR, tables.methodParts(), "method"));
        names.problems.addAll(methods.check(ERROR, tables.kitNeeds(), "method"));
        names.problems.addAll(methods.check(ERROR, tables.permits(), "methods"));
        names.problems.addAll(methods.check(WARNING, tables.pastVisits(), "method"));
        if (tables.methods().whole()) {
            decisions.value().ifPresent(table -> {
                names.problems.addAll(
                        MethodTableCheck.problems(table, tables.methods().values()));
                if (!decisions.hasErrors()) {
                    names.unused(table);
                }
            });
        }
        if (tables.methodParts().complete()) {
            tables.methods().rows().forEach(names::parts);
            names.kitNeeds();
        }
        return names.problems;
    }

    private void unused(DecisionTable decisions) {
        OptionalInt column = decisions.methodColumn();
        if (column.isEmpty()) {
            return;
        }
        Set<String> used = decisions.rules().stream()
                .flatMap(rule -> rule.outputs().get(column.getAsInt()).stream())
                .collect(Collectors.toSet());
        for (Placed<Method> row : tables.methods().rows()) {
            if (!used.contains(row.value().id())) {
                problems.add(Problem.note(
                        "method-not-used",
                        row.place(),
                        "no rule of the decision table gives " + row.value().id(),
                        "",
                        "delete it, or add the rule that is missing"));
            }
        }
    }

    private void parts(Placed<Method> row) {
        Method method = row.value();
        boolean hasParts = tables.methodParts().names("method").contains(method.id());
        boolean visits = method.kind() != MethodKind.NONE;
        if (visits && !hasParts) {
            problems.add(Problem.error(
                    "method-without-parts",
                    row.place(),
                    method.id() + " is a method with a visit, and "
                            + tables.methodParts().file() + " has no part of it",
                    "at least one part, or the kind none",
                    "add its parts there"));
        }
        if (!visits && hasParts) {
            problems.add(Problem.warning(
                    "method-with-parts",
                    row.place(),
                    method.id() + " has the kind none and parts all the same; no visit will be planned",
                    "no parts, or another kind",
                    "check the kind"));
        }
    }

    private void kitNeeds() {
        Set<String> parts = tables.methodParts().raw().stream()
                .map(MethodNames::methodAndPart)
                .collect(Collectors.toSet());
        Set<String> methods = tables.methodParts().names("method");
        for (Row row : tables.kitNeeds().raw()) {
            boolean partUnknown = methods.contains(row.raw("method")) && !parts.contains(methodAndPart(row));
            if (partUnknown) {
                problems.add(Problem.error(
                        "part-unknown",
                        row.place().column("part"),
                        row.raw("method") + " has no part \"" + row.raw("part") + "\"",
                        "a part of that method in " + tables.methodParts().file(),
                        "mend the part here or add it there"));
            }
        }
    }

    private static String methodAndPart(Row row) {
        return row.raw("method") + "\n" + row.raw("part");
    }
}
