package org.wadeplan.geo.problem;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Problems for a person to read where a large file has very many of one kind: the first few of each kind, and one line that
 * says how many more there are, so that nine hundred notes do not bury one error. Errors are always shown one by one.
 */
public final class ProblemDigest {

    /** Up to so many of one kind are all shown. */
    private static final int MOST_WHOLE = 10;

    private static final int EXAMPLES = 3;

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
            boolean whole = problem.severity() == Severity.ERROR || count <= MOST_WHOLE;
            if (whole || number <= EXAMPLES) {
                digest.add(problem);
            }
            if (!whole && number == EXAMPLES) {
                digest.add(rest(problem, count - EXAMPLES));
            }
        }
        return digest;
    }

    private static Problem rest(Problem example, int more) {
        return new Problem(
                example.severity(),
                example.code(),
                SourcePlace.file(example.place().file()),
                more + " more like the " + EXAMPLES + " above",
                "",
                "to see every one, ask with --json");
    }
}
