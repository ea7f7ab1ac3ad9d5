package org.wadeplan.planner.effort;

/**
 * One thing, last time and today.
 *
 * @param what {@code season}
 * @param last as it was, with its unit; {@code not known} where nobody wrote it down
 * @param today as it is planned
 * @param likeness whether the two may be compared
 * @param difference in words; empty where there is none to speak of
 */
public record Compared(String what, String last, String today, Likeness likeness, String difference) {

    /** Whether two visits agree in one thing. */
    public enum Likeness {
        SAME("same"),
        DIFFERS("differs"),
        NOT_KNOWN("not known");

        private final String word;

        Likeness(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    static final String UNKNOWN = "not known";
}
