package org.wadeplan.cli;

/** What the program's exit code means; the same for every command. */
final class ExitCode {

    static final int FINE = 0;
    /** Findings at error level: the command did its work, and a person must read what it found. */
    static final int FINDINGS = 1;

    static final int USAGE = 2;
    /** Unreadable or invalid input. */
    static final int INVALID_INPUT = 3;

    static final int NO_FEASIBLE_PLAN = 4;
    static final int INTERNAL_FAULT = 5;

    private ExitCode() {}
}
