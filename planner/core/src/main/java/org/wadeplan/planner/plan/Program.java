package org.wadeplan.planner.plan;

/** The program's own version, as printed on pages and written into plans. */
public final class Program {

    public static final String VERSION = "0.1.0";

    private Program() {}
}
