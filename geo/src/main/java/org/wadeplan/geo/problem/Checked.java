package org.wadeplan.geo.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value that was made from a person's files, with every problem found while making it.
 *
 * <p>A value may be present together with problems: warnings and notes always, and errors where the rest could still be
 * read, so that all problems can be shown at once. Whoever goes on to plan asks {@link #hasErrors()} first.
 *
 * @param value what could be made; empty where nothing could
 * @param problems everything that was found, worst first
 */
public record Checked<T>(Optional<T> value, List<Problem> problems) {

    public Checked {
        problems = problems.stream().sorted(Problem.WORST_FIRST).toList();
    }

    public static <T> Checked<T> of(T value) {
        return new Checked<>(Optional.of(value), List.of());
    }

    public static <T> Checked<T> of(T value, List<Problem> problems) {
        return new Checked<>(Optional.of(value), problems);
    }

    public static <T> Checked<T> failed(List<Problem> problems) {
        return new Checked<>(Optional.empty(), problems);
    }

    public static <T> Checked<T> failed(Problem problem) {
        return failed(List.of(problem));
    }

    public boolean hasErrors() {
        return value.isEmpty() || problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    public <R> Checked<R> map(Function<T, R> change) {
        return new Checked<>(value.map(change), problems);
    }

    /** Goes on with the value where there is one, and keeps the problems of both steps. */
    public <R> Checked<R> then(Function<T, Checked<R>> next) {
        return value.map(next)
                .map(result -> new Checked<>(result.value(), joined(problems, result.problems())))
                .orElseGet(() -> failed(problems));
    }

    public Checked<T> with(List<Problem> more) {
        return new Checked<>(value, joined(problems, more));
    }

    private static List<Problem> joined(List<Problem> first, List<Problem> second) {
        List<Problem> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }
}
