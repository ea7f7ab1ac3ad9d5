package org.wadeplan.geo.terrain;

import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.GridSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * What is wanted of a grid file.
 *
 * @param place how problems name the file
 * @param round the round's metric system
 * @param hints what a person says about it
 * @param area only cells here are wanted, in the round's system; empty for all
 */
record GridRequest(SourcePlace place, CoordinateSystem round, GridHints hints, Optional<Envelope> area) {

    GridFaults faults() {
        return new GridFaults(place);
    }

    /** The system that a person names, if one does. */
    Optional<Checked<GridSystem>> statedSystem() {
        return hints.crs().map(code -> GridSystem.named(code, round, place));
    }

    GridWindow window(GridFrame frame, GridSystem system) {
        return area.map(wanted -> GridWindow.covering(wanted, frame, system)).orElseGet(frame::whole);
    }
}
