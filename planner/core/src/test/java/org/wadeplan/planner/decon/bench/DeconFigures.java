package org.wadeplan.planner.decon.bench;

import java.util.List;

/** Something that measures one or more lines of the benchmark. Add a class and name it in {@link DeconBench}. */
public interface DeconFigures {

    /** Measures now; takes seconds. */
    List<DeconFigure> measured();
}
