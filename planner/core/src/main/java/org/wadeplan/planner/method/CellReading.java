package org.wadeplan.planner.method;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads cells and turns their faults into problems at their place. */
final class CellReading {

    private final String file;
    private final List<Problem> problems;

    CellReading(String file, List<Problem> problems) {
        this.file = file;
        this.problems = problems;
    }

    Optional<TableCell> read(String text, ValueType type, SourcePlace place) {
        return UnaryTestParser.parse(text, type)
                .fold(
                        (test, doubts) -> {
                            doubts.forEach(doubt -> report(Severity.WARNING, doubt, text, place));
                            return Optional.of(new TableCell(text, test));
                        },
                        fault -> {
                            report(Severity.ERROR, fault, text, place);
                            return Optional.empty();
                        });
    }

    private void report(Severity severity, CellFault fault, String text, SourcePlace place) {
        problems.add(new Problem(
                severity,
                fault.code(),
                place,
                "\"" + text + "\", at character " + fault.position() + ": " + fault.found(),
                fault.expected(),
                "correct the cell in " + file));
    }
}
