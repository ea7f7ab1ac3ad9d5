package org.wadeplan.geo.problem;

import java.util.Comparator;

/**
 * One fault in what a person gave us, or one finding on a table.
 *
 * @param severity how much it matters
 * @param code stable, kebab-case, for tests and scripts: {@code decimal-comma}
 * @param place where it stands
 * @param found what was found there, in words that need no other context
 * @param expected what is allowed there
 * @param remedy what to do about it
 */
public record Problem(Severity severity, String code, SourcePlace place, String found, String expected, String remedy) {

    /** Worst first, then by file, line, row and code, so that lists never depend on reading order. */
    public static final Comparator<Problem> WORST_FIRST = Comparator.comparing(Problem::severity)
            .thenComparing(problem -> problem.place().file())
            .thenComparing(problem -> problem.place().line().orElse(0))
            .thenComparing(problem -> problem.place().toString())
            .thenComparing(Problem::code)
            .thenComparing(Problem::found);

    public Problem {
        if (code.isBlank() || found.isBlank()) {
            throw new IllegalArgumentException("A problem needs a code and what was found: " + code + " / " + found);
        }
    }

    public static Problem error(String code, SourcePlace place, String found, String expected, String remedy) {
        return new Problem(Severity.ERROR, code, place, found, expected, remedy);
    }

    public static Problem warning(String code, SourcePlace place, String found, String expected, String remedy) {
        return new Problem(Severity.WARNING, code, place, found, expected, remedy);
    }

    public static Problem note(String code, SourcePlace place, String found, String expected, String remedy) {
        return new Problem(Severity.NOTE, code, place, found, expected, remedy);
    }

    /** {@code sites.csv, line 4 (KX-12), column depth_max_m: "0,74" has a comma. Allowed: a point. Do: write 0.74} */
    public String sentence() {
        StringBuilder words = new StringBuilder(place.toString()).append(": ").append(open(found));
        if (!expected.isBlank()) {
            words.append(". Allowed: ").append(open(expected));
        }
        if (!remedy.isBlank()) {
            words.append(". Do: ").append(remedy);
        }
        return words.toString();
    }

    /** Without the full stop of its own, so that the sentence does not get two. */
    private static String open(String words) {
        return words.endsWith(".") && !words.endsWith("..") ? words.substring(0, words.length() - 1) : words;
    }
}
