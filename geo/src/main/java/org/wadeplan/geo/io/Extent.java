package org.wadeplan.geo.io;

import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.StatedSystem;

/**
 * Where a layer lies, as its file states it.
 *
 * @param box in the layer's own system, easting or longitude first
 * @param crs empty where the file states none
 */
record Extent(Envelope box, Optional<StatedSystem> crs) {

    /** The middle on WGS 84; empty where that cannot be told. */
    Optional<LonLat> middle(Optional<StatedSystem> settings) {
        double x = (box.getMinX() + box.getMaxX()) / 2;
        double y = (box.getMinY() + box.getMaxY()) / 2;
        return box.isNull() || !Double.isFinite(x) || !Double.isFinite(y)
                ? Optional.empty()
                : settings.or(() -> crs).flatMap(stated -> CoordinateSystem.lonLat(stated, x, y));
    }
}
