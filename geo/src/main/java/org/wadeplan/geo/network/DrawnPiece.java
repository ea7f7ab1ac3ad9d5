package org.wadeplan.geo.network;

import java.util.Optional;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * One line of the file, or several joined, on the way to becoming a stream line.
 *
 * @param feature what the file calls the feature, of several joined the uppermost
 * @param flowStated whether the file itself says which way the water runs, and the line already runs that way
 */
record DrawnPiece(
        String feature,
        String code,
        Optional<String> name,
        Optional<String> catchment,
        boolean flowStated,
        LineString line,
        SourcePlace place) {

    DrawnPiece with(LineString changed) {
        return new DrawnPiece(feature, code, name, catchment, flowStated, changed, place);
    }

    DrawnPiece turned() {
        return with(line.reverse());
    }
}
