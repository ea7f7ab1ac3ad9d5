package org.wadeplan.planner.method;

/** Carries a fault from deep in a cell to the parser's door; never leaves this package. */
final class CellRefusal extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient CellFault fault;

    CellRefusal(CellFault fault) {
        super(fault.found());
        this.fault = fault;
    }

    CellFault fault() {
        return fault;
    }
}
