package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Collects what is wrong with a stream file. A suspected fault is an error until a person accepts its repair; then the
 * repair is made on our copy of the line and noted. The file itself is never changed.
 */
final class SuspectedFaults {

    private static final int MOST_NAMED = 20;

    private final AcceptedRepairs accepted;
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> offered = new TreeSet<>();

    SuspectedFaults(AcceptedRepairs accepted) {
        this.accepted = accepted;
    }

    /**
     * A fault that one repair would mend.
     *
     * @param id of the repair, {@code drop-spike:TOL}
     * @param found what was found
     * @param assumed what the repair assumes and does, as a clause: {@code the line is turned round}
     * @return whether to make the repair
     */
    boolean mayRepair(String id, String code, SourcePlace place, String found, String assumed) {
        return asked(Severity.ERROR, id, code, place, found, assumed);
    }

    /** The same for what may be a slip or may be right: the plan goes on with the lines as they are drawn. */
    boolean mayImprove(String id, String code, SourcePlace place, String found, String assumed) {
        return asked(Severity.WARNING, id, code, place, found, assumed);
    }

    private boolean asked(Severity severity, String id, String code, SourcePlace place, String found, String assumed) {
        offered.add(id);
        if (accepted.accepts(id)) {
            problems.add(Problem.note(
                    code + "-repaired", place, found + "; " + assumed + ", as accepted by " + id, "", "nothing"));
            return true;
        }
        problems.add(new Problem(
                severity,
                code,
                place,
                found + "; the repair assumes a slip of drawing: " + assumed,
                "a line as the water runs, in one piece, source to mouth",
                "look at it on the map; accept the repair with --accept " + id
                        + " (the file stays as it is), or correct the file"));
        return false;
    }

    /** Whether a repair was offered before, so that it need not be again. */
    boolean hasOffered(String id) {
        return offered.contains(id);
    }

    /** Whether an answer other than a repair was given, such as {@code as-drawn:OUN}. */
    boolean answered(String id) {
        offered.add(id);
        return accepted.accepts(id);
    }

    void add(Problem problem) {
        problems.add(problem);
    }

    /** Everything found, with a warning for each accepted repair that nothing offers. */
    List<Problem> all(SourcePlace file) {
        List<Problem> all = new ArrayList<>(problems);
        for (String stranger : accepted.notAmong(offered)) {
            all.add(Problem.warning(
                    "repair-not-offered",
                    file,
                    "the accepted repair \"" + stranger + "\" fits nothing here",
                    offered.isEmpty() ? "none: no repair is needed" : "one of " + offeredInWords(),
                    "take it out, or correct its spelling"));
        }
        return all;
    }

    /** A national file may offer thousands: the first few tell how they are spelt. */
    private String offeredInWords() {
        String first = offered.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        int more = offered.size() - MOST_NAMED;
        return more > 0 ? first + " and " + more + " more" : first;
    }
}
