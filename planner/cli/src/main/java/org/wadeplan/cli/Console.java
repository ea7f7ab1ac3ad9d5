package org.wadeplan.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.ProblemDigest;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;

/** Where a command writes: results to standard output, problems and progress to standard error. */
record Console(PrintWriter out, PrintWriter err, Clock clock) {

    void line(String text) {
        out.println(text);
    }

    void progress(String text) {
        err.println(text);
        err.flush();
    }

    /** The problems, broken into lines of a terminal's width, very many of one kind summed up, then a count of all. */
    void problems(List<Problem> problems) {
        for (Problem problem : ProblemDigest.of(problems)) {
            TextTable.hanging(word(problem.severity()) + " ", problem.sentence() + " [" + problem.code() + "]")
                    .forEach(err::println);
        }
        if (!problems.isEmpty()) {
            err.println(count(problems));
        }
    }

    /** What ended a command early, as one JSON document or one sentence; the result is an empty list. */
    void stopped(boolean json, String command, Problem problem) {
        if (json) {
            out.print(JsonDocument.text(command, "", List.of(problem), List.of()));
        } else {
            progress("wadeplan: " + problem.sentence());
        }
    }

    /** A fault of ours: one sentence, never a stack trace. */
    int fault(Exception fault, boolean json, String command) {
        String what = fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
        if (json) {
            stopped(
                    true,
                    command,
                    Problem.error(
                            "internal-fault",
                            SourcePlace.file("wadeplan"),
                            what,
                            "",
                            "please report it with the command that you gave"));
        }
        err.println("wadeplan: a fault in Wadeplan itself: " + what);
        err.println("Please report it with the command that you gave.");
        StackTraceElement[] trace = fault.getStackTrace();
        if (trace.length > 0) {
            err.println("It happened in " + trace[0].getClassName() + ", line " + trace[0].getLineNumber() + ".");
        }
        return ExitCode.INTERNAL_FAULT;
    }

    private static String word(Severity severity) {
        return switch (severity) {
            case ERROR -> "ERROR  ";
            case WARNING -> "WARNING";
            case NOTE -> "note   ";
        };
    }

    private static String count(List<Problem> problems) {
        long errors = countOf(problems, Severity.ERROR);
        long warnings = countOf(problems, Severity.WARNING);
        long notes = countOf(problems, Severity.NOTE);
        return errors + plural(errors, " error", " errors") + ", " + warnings
                + plural(warnings, " warning", " warnings") + ", " + notes + plural(notes, " note", " notes");
    }

    private static long countOf(List<Problem> problems, Severity severity) {
        return problems.stream()
                .filter(problem -> problem.severity() == severity)
                .count();
    }

    private static String plural(long count, String one, String many) {
        return count == 1 ? one : many;
    }
}
