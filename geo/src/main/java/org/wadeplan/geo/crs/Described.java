package org.wadeplan.geo.crs;

import java.util.Optional;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.NoninvertibleTransformException;
import org.geotools.referencing.CRS;
import org.geotools.referencing.operation.transform.ConcatenatedTransform;

/**
 * A system that a map file states.
 *
 * @param system with the easting or longitude first
 * @param published the published system on the same datum, for its shifts to other datums, where the file names the datum
 *     and gives no shift of its own
 * @param code where the system itself is a published one
 */
record Described(CoordinateReferenceSystem system, Optional<GeographicCRS> published, Optional<String> code) {

    boolean inDegrees() {
        return system instanceof GeographicCRS;
    }

    /**
     * The way to another system.
     *
     * @param roughly whether an unknown shift between datums may be taken for none
     */
    MathTransform to(CoordinateReferenceSystem target, boolean roughly) throws FactoryException {
        if (published.isEmpty()) {
            return CRS.findMathTransform(system, target, roughly);
        }
        MathTransform shift = CRS.findMathTransform(published.get(), target, roughly);
        if (!(system instanceof ProjectedCRS projected)) {
            return shift;
        }
        try {
            MathTransform toDegrees =
                    projected.getConversionFromBase().getMathTransform().inverse();
            return ConcatenatedTransform.create(toDegrees, shift);
        } catch (NoninvertibleTransformException oneWay) {
            throw new FactoryException(oneWay);
        }
    }
}
