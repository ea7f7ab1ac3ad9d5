package org.wadeplan.geo.crs;

import java.util.Optional;
import org.geotools.api.metadata.extent.GeographicBoundingBox;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.geotools.referencing.CRS;
import org.geotools.referencing.crs.DefaultGeographicCRS;

/** Finds the system that a map file states, by its code or else by what is written about it. */
final class Definitions {

    /** About ten centimetres on the ground: some dialects round angles so far that 4 cm come of it. */
    private static final double SAME_PLACE_DEG = 1e-6;

    /** A projection and its inverse that miss by more than this, in the system's unit, were not understood. */
    private static final double ROUND_TRIP = 0.01;

    /** Where in the published area both are compared: in its middle and towards two corners. */
    private static final double[] SHARES = {0.5, 0.25, 0.75};

    private Definitions() {}

    /** Empty where it is unknown or not understood. */
    static Optional<Described> system(StatedSystem stated) {
        return stated.code().flatMap(Definitions::coded).or(() -> stated.definition()
                .flatMap(WktNode::parse)
                .flatMap(OldForm::of)
                .flatMap(Definitions::written));
    }

    private static Optional<Described> coded(String code) {
        return KnownSystems.decode(code)
                .flatMap(Definitions::inThePlane)
                .map(system -> new Described(system, Optional.empty(), Optional.of(code)));
    }

    private static Optional<CoordinateReferenceSystem> inThePlane(CoordinateReferenceSystem system) {
        boolean plane = system.getCoordinateSystem().getDimension() == 2;
        return Optional.ofNullable(plane ? system : CRS.getHorizontalCRS(system));
    }

    private static Optional<Described> written(WktNode definition) {
        Optional<Described> coded = definition.epsgCode().flatMap(Definitions::coded);
        if (coded.isPresent()) {
            return coded;
        }
        Optional<CoordinateReferenceSystem> own = parsed(definition);
        // A published system is better than its description: it has a shift to WGS 84 and an area of use.
        return PublishedNames.systems(definition.name()).stream()
                .flatMap(code -> coded(code).stream())
                .filter(known ->
                        own.map(described -> agree(known.system(), described)).orElse(true))
                .findFirst()
                .or(() -> own.flatMap(Definitions::inThePlane)
                        .map(system -> new Described(system, publishedBase(definition, system), Optional.empty())));
    }

    private static Optional<CoordinateReferenceSystem> parsed(WktNode definition) {
        try {
            return Optional.of(CRS.parseWKT(definition.written()));
        } catch (FactoryException | IllegalArgumentException notUnderstood) {
            return Optional.empty();
        }
    }

    private static Optional<GeographicCRS> publishedBase(WktNode definition, CoordinateReferenceSystem system) {
        Optional<WktNode> datum = definition.child("GEOGCS").orElse(definition).child("DATUM");
        GeographicCRS own = base(system);
        if (datum.isEmpty() || datum.get().child("TOWGS84").isPresent() || !plain(own)) {
            return Optional.empty();
        }
        return PublishedNames.onDatum(datum.get().name()).stream()
                .flatMap(code -> KnownSystems.decode(code).stream())
                .filter(GeographicCRS.class::isInstance)
                .map(GeographicCRS.class::cast)
                .filter(published -> plain(published) && sameEllipsoid(published, own))
                .findFirst();
    }

    private static GeographicCRS base(CoordinateReferenceSystem system) {
        if (system instanceof ProjectedCRS projected) {
            return projected.getBaseCRS();
        }
        return system instanceof GeographicCRS geographic ? geographic : DefaultGeographicCRS.WGS84;
    }

    /** In degrees from Greenwich. */
    private static boolean plain(GeographicCRS system) {
        String unit = system.getCoordinateSystem().getAxis(0).getUnit().toString();
        return system.getDatum().getPrimeMeridian().getGreenwichLongitude() == 0
                && (unit.equals("deg") || unit.equals("\u00b0"));
    }

    private static boolean sameEllipsoid(GeographicCRS one, GeographicCRS other) {
        return Math.abs(one.getDatum().getEllipsoid().getSemiMajorAxis()
                        - other.getDatum().getEllipsoid().getSemiMajorAxis())
                < 0.01;
    }

    /**
     * Whether both show places of the published area alike, since a name alone can deceive; or whether the description
     * cannot be brought back, so that only the name can be trusted.
     */
    private static boolean agree(CoordinateReferenceSystem published, CoordinateReferenceSystem own) {
        if (published instanceof ProjectedCRS known && own instanceof ProjectedCRS described) {
            return agree(known, described);
        }
        return published instanceof GeographicCRS known
                && own instanceof GeographicCRS described
                && sameEllipsoid(known, described);
    }

    private static boolean agree(ProjectedCRS published, ProjectedCRS own) {
        GeographicBoundingBox area = CRS.getGeographicBoundingBox(published);
        if (area == null) {
            return false;
        }
        boolean same = true;
        for (double share : SHARES) {
            double[] place = {
                between(area.getWestBoundLongitude(), area.getEastBoundLongitude(), share),
                between(area.getSouthBoundLatitude(), area.getNorthBoundLatitude(), share)
            };
            try {
                MathTransform toOwn = own.getConversionFromBase().getMathTransform();
                double[] plane = moved(published.getConversionFromBase().getMathTransform(), place);
                double[] described = moved(toOwn.inverse(), plane);
                if (!near(moved(toOwn, described), plane, ROUND_TRIP)) {
                    return true;
                }
                same &= near(described, place, SAME_PLACE_DEG);
            } catch (TransformException notThere) {
                return true;
            }
        }
        return same;
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    private static boolean near(double[] one, double[] other, double most) {
        return Math.abs(one[0] - other[0]) < most && Math.abs(one[1] - other[1]) < most;
    }

    private static double[] moved(MathTransform transform, double[] from) throws TransformException {
        double[] to = new double[2];
        transform.transform(from, 0, to, 0, 1);
        return to;
    }
}
