package org.wadeplan.geo.io;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Gathers problems of one file. Of each kind only the first are kept one by one: a national file may have millions. */
final class Findings {

    private static final int EACH = 50;

    private final SourcePlace file;
    private final List<Problem> kept = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();

    Findings(SourcePlace file) {
        this.file = file;
    }

    void add(Problem problem) {
        if (counts.merge(problem.code(), 1, Integer::sum) <= EACH) {
            kept.add(problem);
        }
    }

    void addAll(List<Problem> problems) {
        problems.forEach(this::add);
    }

    boolean hasErrors() {
        return kept.stream().anyMatch(problem -> problem.severity() == org.wadeplan.geo.problem.Severity.ERROR);
    }

    List<Problem> all() {
        List<Problem> all = new ArrayList<>(kept);
        counts.forEach((code, count) -> {
            if (count > EACH) {
                all.add(rest(code, count - EACH));
            }
        });
        return all;
    }

    private Problem rest(String code, int more) {
        Problem like = kept.stream()
                .filter(problem -> problem.code().equals(code))
                .findFirst()
                .orElseThrow();
        return new Problem(
                like.severity(),
                code,
                file.row("the rest"),
                more + " more problems of the kind " + code + " were found; the first " + EACH + " are listed",
                "",
                "mend the first ones and look again");
    }
}
