package org.wadeplan.desktop.session;

import java.util.List;
import java.util.stream.Stream;

/**
 * A session with the ones before and after it.
 *
 * @param before oldest first, at most {@value #KEPT}
 * @param after next first
 */
public record SessionHistory(List<PlanSession> before, PlanSession now, List<PlanSession> after) {

    static final int KEPT = 100;

    public static SessionHistory of(PlanSession first) {
        return new SessionHistory(List.of(), first, List.of());
    }

    /** A new session follows; what had been undone is forgotten. */
    public SessionHistory next(PlanSession session) {
        List<PlanSession> all = Stream.concat(before.stream(), Stream.of(now)).toList();
        return new SessionHistory(all.subList(Math.max(0, all.size() - KEPT), all.size()), session, List.of());
    }

    /** One step back; the same where there is none. */
    public SessionHistory undo() {
        if (before.isEmpty()) {
            return this;
        }
        int last = before.size() - 1;
        return new SessionHistory(
                before.subList(0, last),
                before.get(last),
                Stream.concat(Stream.of(now), after.stream()).toList());
    }

    /** One step forward; the same where there is none. */
    public SessionHistory redo() {
        if (after.isEmpty()) {
            return this;
        }
        return new SessionHistory(
                Stream.concat(before.stream(), Stream.of(now)).toList(), after.get(0), after.subList(1, after.size()));
    }
}
