package org.wadeplan.planner.files;

import static org.wadeplan.geo.problem.Severity.ERROR;
import static org.wadeplan.geo.problem.Severity.WARNING;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;

/** The decision table, the methods, their parts, their kit and the permits must speak of the same methods. */
final class MethodNames {

    private final RoundTables tables;
    private final List<Problem> problems = new ArrayList<>();

    private MethodNames(RoundTables tables) {
        this.tables = tables;
    }

    static List<Problem> check(RoundTables tables, Optional<DecisionTable> decisions) {
        MethodNames names = new MethodNames(tables);
        KnownIds methods = KnownIds.of("a method", tables.methods(), "method");
        names.problems.addAll(methods.check(ERROR, tables.methodParts(), "method"));
        names.problems.addAll(methods.check(ERROR, tables.kitNeeds(), "method"));
        names.problems.addAll(methods.check(ERROR, tables.permits(), "methods"));
        names.problems.addAll(methods.check(WARNING, tables.pastVisits(), "method"));
        if (tables.methods().complete()) {
            decisions.ifPresent(names::decisionTable);
        }
        if (tables.methodParts().complete()) {
            tables.methods().rows().forEach(names::parts);
            names.kitNeeds();
        }
        return names.problems;
    }

    private void decisionTable(DecisionTable decisions) {
        Set<String> known = tables.methods().names("method");
        Set<String> used = new LinkedHashSet<>();
        OptionalInt column = decisions.methodColumn();
        for (TableRule rule : column.isPresent() ? decisions.rules() : List.<TableRule>of()) {
            rule.outputs().get(column.getAsInt()).ifPresent(method -> {
                used.add(method);
                if (!known.contains(method)) {
                    problems.add(unknown(decisions, rule, method, known));
                }
            });
        }
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

    private Problem unknown(DecisionTable decisions, TableRule rule, String method, Set<String> known) {
        Optional<String> nearest = NearestWord.of(method, known);
        return Problem.error(
                "unknown-code",
                SourcePlace.part(decisions.file(), "rule " + rule.number()).column(DecisionTable.METHOD_OUTPUT),
                "\"" + method + "\" is not known"
                        + nearest.map(word -> "; nearest is " + word).orElse(""),
                "a method of " + tables.methods().file() + ": " + String.join(", ", known),
                nearest.map(word -> "write " + word + " if that is meant").orElse("add it there, or mend it here"));
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
