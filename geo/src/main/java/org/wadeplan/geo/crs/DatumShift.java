package org.wadeplan.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The way from a datum to WGS 84 as the seven numbers of a TOWGS84 bracket (OGC 01-009, clause 7.3). */
final class DatumShift {

    private DatumShift() {}

    /** Of a transformation written into the definition; empty where its method is none of the three that fit. */
    static Optional<WktNode> ofAbridged(WktNode transformation) {
        String method =
                transformation.child("METHOD").map(WktNode::name).orElse("").toLowerCase(Locale.ROOT);
        boolean shift = method.startsWith("geocentric translation");
        boolean vector = method.startsWith("position vector");
        boolean frame = method.startsWith("coordinate frame");
        if (!shift && !vector && !frame) {
            return Optional.empty();
        }
        double[] seven = new double[7];
        for (WktNode parameter : transformation.children("PARAMETER")) {
            place(seven, parameter, frame ? -1 : 1);
        }
        return Optional.of(bracket(seven));
    }

    /** Turns of the frame have the opposite sign of turns of the vector. Source: EPSG Guidance Note 7-2, 4.3.3. */
    private static void place(double[] seven, WktNode parameter, int turnSign) {
        String name = parameter.name().toLowerCase(Locale.ROOT);
        double value = parameter.numberAt(0).orElse(0);
        int axis = "xyz".indexOf(name.isEmpty() ? '?' : name.charAt(0));
        if (name.startsWith("scale")) {
            seven[6] = (value - 1) * 1e6;
        } else if (axis >= 0 && name.contains("translation")) {
            seven[axis] = value;
        } else if (axis >= 0 && name.contains("rotation")) {
            seven[3 + axis] = turnSign * value;
        }
    }

    /** The system with this shift in its datum, in place of one that may be there. */
    static WktNode withShift(WktNode system, WktNode shift) {
        Optional<WktNode> base = system.child("GEOGCS");
        if (base.isPresent()) {
            return system.replacing(withShift(base.get(), shift));
        }
        return system.child("DATUM")
                .map(datum -> system.replacing(datum.without("TOWGS84").with(shift)))
                .orElse(system);
    }

    private static WktNode bracket(double... seven) {
        List<WktNode> numbers = new ArrayList<>();
        for (double number : seven) {
            numbers.add(WktNode.number(number));
        }
        return WktNode.bracket("TOWGS84", numbers);
    }
}
