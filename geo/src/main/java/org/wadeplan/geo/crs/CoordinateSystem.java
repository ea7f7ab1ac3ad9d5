package org.wadeplan.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.geotools.api.metadata.extent.GeographicBoundingBox;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.geotools.referencing.CRS;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * A coordinate system in metres in which lengths may be measured. The only class that asks GeoTools for one.
 *
 * <p>Everywhere in Wadeplan the first coordinate is the easting or the longitude, whatever order an authority lists for
 * its axes: EPSG:2193 and EPSG:4326 list the northing first, and swapped values would give silent nonsense.
 *
 * <p>Immutable; safe to share between threads.
 */
public final class CoordinateSystem {

    /** A system's area of use is widened by this much before a place counts as outside it. */
    private static final double AREA_MARGIN_DEG = 1;

    private final String code;
    private final ProjectedCRS system;
    private final MathTransform forward;
    private final MathTransform backward;

    private CoordinateSystem(String code, ProjectedCRS system, MathTransform forward, MathTransform backward) {
        this.code = code;
        this.system = system;
        this.forward = forward;
        this.backward = backward;
    }

    /**
     * Looks a system up by its code.
     *
     * @param code an EPSG code such as {@code EPSG:32627}
     * @param place where the code was written, for the problem
     * @return the system; or an error where the code is unknown, or its system is not a projected one in metres, or it
     *     stretches lengths too much to measure in (Mercator)
     */
    public static Checked<CoordinateSystem> named(String code, SourcePlace place) {
        String tidy = code.strip().toUpperCase(Locale.ROOT);
        Optional<CoordinateReferenceSystem> found = KnownSystems.decode(tidy);
        if (found.isEmpty()) {
            return Checked.failed(Problem.error(
                    "crs-unknown",
                    place,
                    "\"" + code + "\" is not a coordinate system that is known here",
                    "an EPSG code such as EPSG:32627 or EPSG:2193",
                    "look the code up with whoever made the map data and write it as EPSG: and digits"));
        }
        return named(tidy, found.get(), place);
    }

    private static Checked<CoordinateSystem> named(String code, CoordinateReferenceSystem found, SourcePlace place) {
        Optional<String> refusal = KnownSystems.whyNotForMeasuring(found);
        if (refusal.isPresent() || !(found instanceof ProjectedCRS projected)) {
            return Checked.failed(Problem.error(
                    "crs-not-for-measuring",
                    place,
                    code + " (" + found.getName().getCode() + ") " + refusal.orElse("is not a projected system"),
                    "a projected system in metres made for the area, such as its UTM zone or national grid",
                    "name such a system as the round's; map files in " + code + " can still be read"));
        }
        return joined(code, projected, place);
    }

    private static Checked<CoordinateSystem> joined(String code, ProjectedCRS projected, SourcePlace place) {
        List<Problem> notes = new ArrayList<>();
        try {
            MathTransform forward = toWgs84(projected, code, place, notes);
            // The inverse of the same transform: two searches can pick different datum paths and miss by metres.
            return Checked.of(new CoordinateSystem(code, projected, forward, forward.inverse()), notes);
        } catch (FactoryException | TransformException failure) {
            return Checked.failed(Problem.error(
                    "crs-not-joined",
                    place,
                    "no way is known from " + code + " to longitude and latitude",
                    "a system that can be turned into WGS 84",
                    "choose the area's UTM zone or national grid"));
        }
    }

    private static MathTransform toWgs84(ProjectedCRS from, String code, SourcePlace place, List<Problem> notes)
            throws FactoryException {
        try {
            return CRS.findMathTransform(from, DefaultGeographicCRS.WGS84, false);
        } catch (FactoryException noDatumShift) {
            notes.add(Problem.warning(
                    "crs-datum-shift-unknown",
                    place,
                    "no datum shift from " + code
                            + " to WGS 84 is known: longitudes and latitudes may be off by metres",
                    "a system on a datum with a known shift",
                    "check one place in the field before trusting GPS tracks made from this round"));
            return CRS.findMathTransform(from, DefaultGeographicCRS.WGS84, true);
        }
    }

    /** For the rest of this package, which is the only one to know GeoTools' types. */
    ProjectedCRS projected() {
        return system;
    }

    /** The authority's code, {@code EPSG:32627}. */
    public String code() {
        return code;
    }

    /** For a page: {@code WGS 84 / UTM zone 27N (EPSG:32627), metres, datum WGS 84}. */
    public String words() {
        return name() + " (" + code + "), metres, datum " + datum();
    }

    /** The system's own name, {@code WGS 84 / UTM zone 27N}. */
    public String name() {
        return system.getName().getCode();
    }

    /** The datum in its everyday short form, {@code WGS 84} or {@code OSGB36}. */
    public String datum() {
        return system.getBaseCRS().getName().getCode();
    }

    /** The definition as well-known text, one line, for files that must carry it. */
    public String definition() {
        return system.toWKT().replaceAll("\\s*\\R\\s*", " ");
    }

    /**
     * The same place on WGS 84.
     *
     * @throws IllegalArgumentException where the place cannot lie in this system; ask {@link #inArea} first
     */
    public LonLat toLonLat(MetricPoint point) {
        double[] at = moved(forward, point.eastM(), point.northM());
        return new LonLat(at[0], at[1]);
    }

    /**
     * The same place in this system.
     *
     * @throws IllegalArgumentException where the place cannot be shown in this system
     */
    public MetricPoint toMetric(LonLat place) {
        double[] at = moved(backward, place.lonDeg(), place.latDeg());
        return new MetricPoint(at[0], at[1]);
    }

    /** Whether a place lies in the system's published area of use, with one degree to spare. */
    public boolean inArea(MetricPoint point) {
        try {
            return inArea(toLonLat(point)) && toMetric(toLonLat(point)).distanceM(point) < 1;
        } catch (IllegalArgumentException outside) {
            return false;
        }
    }

    /** Whether a place lies in the system's published area of use, with one degree to spare. */
    public boolean inArea(LonLat place) {
        GeographicBoundingBox area = CRS.getGeographicBoundingBox(system);
        if (area == null) {
            return true;
        }
        double west = area.getWestBoundLongitude() - AREA_MARGIN_DEG;
        double widthDeg = area.getEastBoundLongitude() + AREA_MARGIN_DEG - west;
        double eastOfWestDeg = positive(place.lonDeg() - west);
        return eastOfWestDeg <= (widthDeg < 0 ? widthDeg + 360 : widthDeg)
                && place.latDeg() >= area.getSouthBoundLatitude() - AREA_MARGIN_DEG
                && place.latDeg() <= area.getNorthBoundLatitude() + AREA_MARGIN_DEG;
    }

    private static double positive(double angleDeg) {
        return (angleDeg % 360 + 360) % 360;
    }

    /**
     * Grid length divided by ground length at a place, eastward: 0.9996 on the central meridian of a UTM zone.
     *
     * <p>Measured with a geodesic on WGS 84 between two places 100 m apart on the grid.
     */
    public double gridScaleAt(MetricPoint point) {
        LonLat west = toLonLat(new MetricPoint(point.eastM() - 50, point.northM()));
        LonLat east = toLonLat(new MetricPoint(point.eastM() + 50, point.northM()));
        return 100
                / Geodesic.WGS84.Inverse(
                                west.latDeg(), west.lonDeg(), east.latDeg(), east.lonDeg(), GeodesicMask.DISTANCE)
                        .s12;
    }

    /**
     * How to bring coordinates of a map file into this system.
     *
     * @param fileCode the code that the file states, geographic systems included
     * @param place the file, for the problem
     */
    public Checked<Reprojection> from(String fileCode, SourcePlace place) {
        return from(StatedSystem.code(fileCode.strip().toUpperCase(Locale.ROOT)), place);
    }

    /**
     * How to bring coordinates of a map file into this system.
     *
     * @param stated what the file says of its system: a code, or a definition without one
     * @param place the file, for the problem
     * @return the way; an error where the system is unknown or not understood, or where its datum could lie far off; a
     *     warning where the datum may differ by a metre or two
     */
    public Checked<Reprojection> from(StatedSystem stated, SourcePlace place) {
        boolean same =
                stated.code().filter(code -> code.equalsIgnoreCase(this.code)).isPresent();
        return same ? Checked.of(Reprojection.NONE) : new Joining(stated, place, code).to(system);
    }

    /** Where a place in a file's system lies on WGS 84; empty where that cannot be told. */
    public static Optional<LonLat> lonLat(StatedSystem stated, double first, double second) {
        return Joining.toWgs84(stated).flatMap(transform -> {
            try {
                double[] at = moved(transform, first, second);
                return Optional.of(new LonLat(at[0], at[1]));
            } catch (IllegalArgumentException nowhere) {
                return Optional.empty();
            }
        });
    }

    /** Whether a file's system counts in degrees; false where it is unknown. */
    public static boolean inDegrees(StatedSystem stated) {
        return Definitions.system(stated).filter(Described::inDegrees).isPresent();
    }

    /** The code that a pair of numbers out of longitude and latitude probably belongs to, if the hint fits it. */
    public static Optional<CoordinateSystem> likely(double first, double second, Optional<CoordinateSystem> hint) {
        if (!Double.isFinite(first) || !Double.isFinite(second)) {
            return Optional.empty();
        }
        return hint.filter(system -> system.inArea(new MetricPoint(first, second)));
    }

    private static double[] moved(MathTransform transform, double first, double second) {
        double[] at = {first, second};
        try {
            transform.transform(at, 0, at, 0, 1);
        } catch (TransformException impossible) {
            throw new IllegalArgumentException("No place at " + first + ", " + second, impossible);
        }
        if (!Double.isFinite(at[0]) || !Double.isFinite(at[1])) {
            throw new IllegalArgumentException("No place at " + first + ", " + second);
        }
        return at;
    }

    @Override
    public String toString() {
        return words();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CoordinateSystem that && that.code.equals(code);
    }

    @Override
    public int hashCode() {
        return code.hashCode();
    }
}
