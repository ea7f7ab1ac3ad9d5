package org.wadeplan.geo.access;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;

/**
 * A parcel of land that people may or may not cross.
 *
 * @param parcel its id
 * @param consented whether there is consent to be on it; not where it was refused, is pending or nobody asked
 * @param area its outline in the round's metric system
 */
public record Land(String parcel, boolean consented, Geometry area) {

    /** An outline that crosses itself is mended, or nothing could be cut with it. */
    public Land {
        area = area.isValid() ? area : GeometryFixer.fix(area);
    }
}
