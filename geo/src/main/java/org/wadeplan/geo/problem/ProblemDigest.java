package org.wadeplan.geo.problem;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Problems for a person to read where a large file has very many of one kind: the first few of each kind, and one line that
 * says how many more there are, so that nine hundred of one kind do not bury one of another. Errors, each of which has to
 * be dealt with, are summed up later than warnings and notes.
 */
public final class ProblemDigest {

    /** Up to so many warnings or notes of one kind are all shown; of more, the first few. */
    private static final int MOST_WHOLE = 10;

    private static final int EXAMPLES = 3;

    private static final int MOST_ERRORS_WHOLE = 30;
    private static final int ERROR_EXAMPLES = 10;

    private static final Pattern ACCEPT = Pattern.compile("--accept ([a-z-]+:)");

    private ProblemDigest() {}

    private record Kind(Severity severity, String code, String file) {

        static Kind of(Problem problem) {
            return new Kind(problem.severity(), problem.code(), problem.place().file());
        }
    }

    /** In the given order; where a kind is summed up, the sum stands after its last example. */
    public static List<Problem> of(List<Problem> problems) {
        Map<Kind, Integer> counts = new LinkedHashMap<>();
        problems.forEach(problem -> counts.merge(Kind.of(problem), 1, Integer::sum));
        Map<Kind, Integer> shown = new LinkedHashMap<>();
        List<Problem> digest = new ArrayList<>();
        for (Problem problem : problems) {
            Kind kind = Kind.of(problem);
            int count = counts.getOrDefault(kind, 0);
            int number = shown.merge(kind, 1, Integer::sum);
            boolean isError = problem.severity() == Severity.ERROR;
            boolean whole = count <= (isError ? MOST_ERRORS_WHOLE : MOST_WHOLE);
            int examples = isError ? ERROR_EXAMPLES : EXAMPLES;
            if (whole || number <= examples) {
                digest.add(problem);
            }
            if (!whole && number == examples) {
                digest.add(rest(problem, examples, count - examples));
            }
        }
        return digest;
    }

    private static Problem rest(Problem example, int shown, int more) {
        Matcher accept = ACCEPT.matcher(example.remedy());
        String all = accept.find()
                ? "; to accept this repair for every one after a look at the map, say --accept " + accept.group(1) + "*"
                : "";
        return new Problem(
                example.severity(),
                example.code(),
                SourcePlace.file(example.place().file()),
                more + " more like the " + shown + " above",
                "",
                "to see every one, ask with --json" + all);
    }
}
