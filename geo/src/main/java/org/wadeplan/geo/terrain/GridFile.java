package org.wadeplan.geo.terrain;

import java.util.Optional;
import org.wadeplan.geo.crs.GridSystem;
import org.wadeplan.geo.problem.Checked;

/** A file that holds a grid, whatever its form. */
interface GridFile {

    /**
     * What was read.
     *
     * @param cells in metres, NaN where not known
     * @param system where they lie
     * @param datum what heights are counted from, where the file says so
     */
    record ReadGrid(GridCells cells, GridSystem system, Optional<String> datum) {}

    Checked<ReadGrid> read();
}
