package org.wadeplan.geo.crs;

import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.quantity.Length;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.VerticalCRS;
import org.geotools.referencing.CRS;
import si.uom.SI;

/**
 * What heights are counted from and in which unit.
 *
 * @param name the system's own name, {@code NAVD88 height (ft)}
 * @param unitM length of its unit, metres
 */
public record HeightSystem(String name, double unitM) {

    /** By the digits of its EPSG code; empty where the code is unknown or no system of heights. */
    public static Optional<HeightSystem> of(OptionalInt code) {
        if (code.isEmpty()) {
            return Optional.empty();
        }
        try {
            CoordinateReferenceSystem found = CRS.decode("EPSG:" + code.getAsInt());
            return found instanceof VerticalCRS heights
                    ? Optional.of(new HeightSystem(heights.getName().getCode(), unitM(heights)))
                    : Optional.empty();
        } catch (FactoryException unknown) {
            return Optional.empty();
        }
    }

    private static double unitM(VerticalCRS heights) {
        return heights.getCoordinateSystem()
                .getAxis(0)
                .getUnit()
                .asType(Length.class)
                .getConverterTo(SI.METRE)
                .convert(1);
    }
}
