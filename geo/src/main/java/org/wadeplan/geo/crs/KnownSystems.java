package org.wadeplan.geo.crs;

import java.util.Locale;
import java.util.Optional;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.referencing.CRS;

/** Finds systems by code, east first, and says which are unfit for measuring. */
final class KnownSystems {

    private KnownSystems() {}

    /** With the easting or longitude first, whatever the authority's order; empty where the code is unknown. */
    static Optional<CoordinateReferenceSystem> decode(String code) {
        try {
            return Optional.of(CRS.decode(code, true));
        } catch (FactoryException unknown) {
            return Optional.empty();
        }
    }

    /** A phrase that goes on after the system's name; empty where lengths may be measured in it. */
    static Optional<String> whyNotForMeasuring(CoordinateReferenceSystem system) {
        if (!(system instanceof ProjectedCRS projected)) {
            return Optional.of("has coordinates in degrees or in three dimensions, not in metres on a plane");
        }
        for (int axis = 0; axis < projected.getCoordinateSystem().getDimension(); axis++) {
            String unit =
                    projected.getCoordinateSystem().getAxis(axis).getUnit().toString();
            if (!unit.equals("m")) {
                return Optional.of("is in " + unit + ", not in metres");
            }
        }
        String method = projected
                .getConversionFromBase()
                .getMethod()
                .getName()
                .getCode()
                .toLowerCase(Locale.ROOT);
        boolean stretches =
                method.contains("mercator") && !method.contains("transverse") && !method.contains("oblique");
        return stretches
                ? Optional.of(
                        "stretches lengths away from the equator (by half at 48° north), so it cannot measure a reach")
                : Optional.empty();
    }
}
