package org.wadeplan.planner.method.audit;

/** What may be wrong with a decision table, worst first. */
public enum FindingKind {
    /** Cases that no rule matches. */
    GAP("gap"),
    /** Cases that rules with different outputs match. */
    CONTRADICTION("contradiction"),
    /** A gap that is one number wide: two rules stop short of the same limit. */
    GAP_AT_LIMIT("gap at a limit"),
    /** A contradiction that is one number wide: two rules both include the same limit. */
    CONTRADICTION_AT_LIMIT("contradiction at a limit"),
    /** A rule that never answers. */
    UNREACHABLE("rule that never answers"),
    /** Cases that several rules match, all with the same outputs. */
    OVERLAP("overlap with the same output"),
    /** The same at one number. */
    OVERLAP_AT_LIMIT("overlap with the same output at a limit"),
    /** A rule that could be deleted without any case coming out otherwise. */
    REDUNDANT("redundant rule");

    private final String words;

    FindingKind(String words) {
        this.words = words;
    }

    /** For people, in lower case. */
    public String words() {
        return words;
    }

    /** Whether it leaves cases without a method or with two. */
    public boolean undecided() {
        return compareTo(CONTRADICTION_AT_LIMIT) <= 0;
    }
}
