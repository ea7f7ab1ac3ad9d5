package org.wadeplan.planner.round;

/** A stretch of work at a site that happens in one go. Nets need two, on two days. */
public enum VisitPart {
    SURVEY("survey"),
    SET("set"),
    LIFT("lift"),
    MARK("mark"),
    NIGHT("night"),
    DRY_CHECK("dry-check");

    private final String word;

    VisitPart(String word) {
        this.word = word;
    }

    /** The word used in tables. */
    public String word() {
        return word;
    }
}
