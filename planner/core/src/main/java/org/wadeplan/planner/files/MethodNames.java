package org.wadeplan.planner.files;

import static org.wadeplan.geo.problem.Severity.ERROR;
import static org.wadeplan.geo.problem.Severity.WARNING;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.MethodTableCheck;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.MethodOverride;
import org.wadeplan.planner.round.RoundHeader;

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

    /** Sites and methods that round.json overrides, each site once. */
    static List<Problem> overrides(RoundTables tables, RoundHeader header) {
        List<Problem> problems = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (int i = 0; i < header.methodOverrides().size(); i++) {
            MethodOverride override = header.methodOverrides().get(i);
            SourcePlace place = SourcePlace.part(RoundJson.FILE, "methodOverrides[" + (i + 1) + "]");
            if (tables.sites().whole() && !tables.sites().names("site").contains(override.site())) {
                problems.add(Problem.error(
                        "override-site-unknown",
                        place,
                        "an override for the site " + override.site() + ", which "
                                + tables.sites().file() + " lacks",
                        "a site of the list",
                        "correct the site, or delete the override"));
            }
            if (tables.methods().whole() && !tables.methods().names("method").contains(override.method())) {
                problems.add(Problem.error(
                        "override-method-unknown",
                        place,
                        "an override with the method " + override.method() + ", which "
                                + tables.methods().file() + " lacks",
                        String.join(", ", tables.methods().names("method")),
                        "correct the method"));
            }
            if (!seen.add(override.site())) {
                problems.add(Problem.error(
                        "override-twice",
                        place,
                        "a second override for the site " + override.site(),
                        "one for each site",
                        "delete one of them"));
            }
        }
        return problems;
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
