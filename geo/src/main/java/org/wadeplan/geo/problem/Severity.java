package org.wadeplan.geo.problem;

/** How much a {@link Problem} matters. Ordered from worst to least. */
public enum Severity {
    /** Nothing can be planned on this; commands exit with 1 or 3. */
    ERROR,
    /** The plan goes on, and the page that depends on it says so. */
    WARNING,
    /** Worth knowing; an assumption that was made, for instance. */
    NOTE
}
