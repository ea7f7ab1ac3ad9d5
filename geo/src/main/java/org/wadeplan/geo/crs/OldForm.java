package org.wadeplan.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Turns a definition in the newer well-known text (ISO 19162) into the older (OGC 01-009), which alone can be read here.
 *
 * <p>Only the plane part of a system is kept. Axes are left out where they point east and north in either order, because
 * map files hold the easting or longitude first whatever the definition says (OGC GeoPackage 1.3, clause 2.1.3.1.1).
 */
final class OldForm {

    private static final double DEGREE = Math.PI / 180;

    private OldForm() {}

    /** Of a definition in either form; empty where it is no projected or geographic system. */
    static Optional<WktNode> of(WktNode root) {
        return switch (root.keyword()) {
            case "PROJCS", "GEOGCS" -> Optional.of(withoutUsualAxes(root));
            case "COMPD_CS", "COMPOUNDCRS" ->
                root.child("PROJCS", "GEOGCS", "PROJCRS", "PROJECTEDCRS", "GEOGCRS", "GEOGRAPHICCRS", "BOUNDCRS")
                        .flatMap(OldForm::of);
            case "BOUNDCRS" -> bound(root);
            case "PROJCRS", "PROJECTEDCRS" -> projected(root).map(system -> withCode(system, root));
            case "GEOGCRS", "GEOGRAPHICCRS", "GEODCRS", "GEODETICCRS" ->
                geographic(root).map(system -> withCode(system, root));
            case "BASEGEOGCRS", "BASEGEODCRS" -> geographic(root);
            default -> Optional.empty();
        };
    }

    private static WktNode withCode(WktNode system, WktNode newer) {
        return newer.epsgCode()
                .map(code -> system.with(WktNode.bracket(
                        "AUTHORITY",
                        List.of(WktNode.quoted("EPSG"), WktNode.quoted(code.substring(code.indexOf(':') + 1))))))
                .orElse(system);
    }

    private static WktNode withoutUsualAxes(WktNode system) {
        boolean usual = system.children("AXIS").stream()
                .map(axis -> axis.inside().get(axis.inside().size() - 1).text().toUpperCase(Locale.ROOT))
                .allMatch(direction -> direction.equals("EAST") || direction.equals("NORTH"));
        // Westing and southing, and polar systems whose axes both point north, stay as they are written.
        boolean polar = system.children("AXIS").stream()
                        .map(axis -> axis.inside().get(axis.inside().size() - 1).text())
                        .distinct()
                        .count()
                == 1;
        return usual && !polar ? system.without("AXIS", "EXTENSION") : system.without("EXTENSION");
    }

    private static Optional<WktNode> projected(WktNode system) {
        Optional<WktNode> base = system.child("BASEGEOGCRS", "BASEGEODCRS").flatMap(OldForm::of);
        Optional<WktNode> conversion = system.child("CONVERSION");
        Optional<WktNode> method = conversion.flatMap(how -> how.child("METHOD", "PROJECTION"));
        if (base.isEmpty() || method.isEmpty()) {
            return Optional.empty();
        }
        double metresPerUnit = unit(system, 1, "LENGTHUNIT", "UNIT");
        List<WktNode> parts = new ArrayList<>();
        parts.add(WktNode.quoted(system.name()));
        parts.add(base.get());
        parts.add(WktNode.bracket(
                "PROJECTION", List.of(WktNode.quoted(method.get().name()))));
        for (WktNode parameter : conversion.get().children("PARAMETER")) {
            parts.add(parameter(parameter, metresPerUnit));
        }
        parts.add(unitNode("metre", metresPerUnit));
        return Optional.of(WktNode.bracket("PROJCS", parts));
    }

    /** Angles in degrees, lengths in the system's own unit: how the older form has them. */
    private static WktNode parameter(WktNode parameter, double metresPerUnit) {
        double value = parameter.numberAt(0).orElse(Double.NaN);
        Optional<WktNode> angle = parameter.child("ANGLEUNIT");
        Optional<WktNode> length = parameter.child("LENGTHUNIT");
        if (angle.isPresent()) {
            value = inDegrees(value, angle.get().numberAt(0).orElse(DEGREE));
        } else if (length.isPresent()) {
            value = value * length.get().numberAt(0).orElse(1) / metresPerUnit;
        }
        return WktNode.bracket("PARAMETER", List.of(WktNode.quoted(parameter.name()), WktNode.number(value)));
    }

    private static double inDegrees(double value, double radiansPerUnit) {
        return Math.abs(radiansPerUnit - DEGREE) < 1e-12 ? value : value * radiansPerUnit / DEGREE;
    }

    private static Optional<WktNode> geographic(WktNode system) {
        Optional<WktNode> datum = system.child("DATUM", "ENSEMBLE", "GEODETICDATUM", "TRF");
        Optional<WktNode> ellipsoid = datum.flatMap(known -> known.child("ELLIPSOID", "SPHEROID"));
        if (ellipsoid.isEmpty()) {
            return Optional.empty();
        }
        double metresPerUnit = unit(ellipsoid.get(), 1, "LENGTHUNIT", "UNIT");
        WktNode spheroid = WktNode.bracket(
                "SPHEROID",
                List.of(
                        WktNode.quoted(ellipsoid.get().name()),
                        WktNode.number(ellipsoid.get().numberAt(0).orElse(Double.NaN) * metresPerUnit),
                        WktNode.number(ellipsoid.get().numberAt(1).orElse(0))));
        String name = datum.get().name().replaceAll(" ensemble$", "");
        Optional<WktNode> meridian = system.child("PRIMEM", "PRIMEMERIDIAN");
        double fromGreenwich = meridian.map(
                        known -> inDegrees(known.numberAt(0).orElse(0), unit(known, DEGREE, "ANGLEUNIT", "UNIT")))
                .orElse(0.0);
        double radiansPerUnit = unit(system, DEGREE, "ANGLEUNIT", "UNIT");
        return Optional.of(WktNode.bracket(
                "GEOGCS",
                List.of(
                        WktNode.quoted(system.name()),
                        WktNode.bracket("DATUM", List.of(WktNode.quoted(name), spheroid)),
                        WktNode.bracket(
                                "PRIMEM",
                                List.of(
                                        WktNode.quoted(
                                                meridian.map(WktNode::name).orElse("Greenwich")),
                                        WktNode.number(fromGreenwich))),
                        unitNode("degree", radiansPerUnit))));
    }

    /** Of the bracket itself, or else of its first axis. */
    private static double unit(WktNode system, double usual, String... keywords) {
        Optional<WktNode> own = system.child(keywords);
        Optional<WktNode> ofAxis = system.child("AXIS").flatMap(axis -> axis.child(keywords));
        OptionalDouble size = own.or(() -> ofAxis).map(unit -> unit.numberAt(0)).orElse(OptionalDouble.empty());
        return size.orElse(usual);
    }

    private static WktNode unitNode(String name, double size) {
        return WktNode.bracket("UNIT", List.of(WktNode.quoted(name), WktNode.number(size)));
    }

    private static Optional<WktNode> bound(WktNode root) {
        Optional<WktNode> source =
                root.child("SOURCECRS").map(holder -> holder.inside().get(0)).flatMap(OldForm::of);
        boolean toWgs84 = root.child("TARGETCRS")
                .map(holder -> holder.inside().get(0))
                .filter(target -> target.name().replace(" ", "").equalsIgnoreCase("WGS84"))
                .isPresent();
        Optional<WktNode> shift =
                root.child("ABRIDGEDTRANSFORMATION").filter(known -> toWgs84).flatMap(DatumShift::ofAbridged);
        return shift.isEmpty() ? source : source.map(system -> DatumShift.withShift(system, shift.get()));
    }
}
