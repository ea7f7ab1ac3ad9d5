package org.wadeplan.geo.crs;

import java.util.Locale;
import java.util.Optional;
import javax.imageio.metadata.IIOMetadata;
import javax.measure.quantity.Length;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.NoninvertibleTransformException;
import org.geotools.api.referencing.operation.TransformException;
import org.geotools.coverage.grid.io.imageio.geotiff.GeoTiffIIOMetadataDecoder;
import org.geotools.coverage.grid.io.imageio.geotiff.GeoTiffMetadata2CRSAdapter;
import org.geotools.referencing.CRS;
import org.geotools.util.factory.Hints;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import si.uom.SI;

/**
 * The coordinate system that a grid of cells lies in, degrees or metres or feet, and the way into it from the round's.
 *
 * <p>Easting or longitude first, as everywhere. Immutable; safe to share between threads.
 */
public final class GridSystem {

    private final String words;
    private final boolean degrees;
    private final double unitM;
    private final MathTransform fromRound;

    private GridSystem(String words, CoordinateReferenceSystem flat, MathTransform fromRound) {
        this.words = words;
        this.degrees = flat instanceof GeographicCRS;
        this.unitM = degrees ? 1 : unitM(flat);
        this.fromRound = fromRound;
    }

    /**
     * By code.
     *
     * @param code such as {@code EPSG:2193} or {@code EPSG:4326}
     * @param round the round's metric system
     * @param place where the code was written, for the problem
     */
    public static Checked<GridSystem> named(String code, CoordinateSystem round, SourcePlace place) {
        return KnownSystems.decode(code.strip().toUpperCase(Locale.ROOT))
                .map(found -> joined(code.strip(), found, round, place))
                .orElseGet(() -> Checked.failed(Problem.error(
                        "crs-unknown",
                        place,
                        "\"" + code + "\" is not a coordinate system that is known here",
                        "an EPSG code such as EPSG:4326 or EPSG:2193",
                        "look the code up with whoever made the grid and write it as EPSG: and digits")));
    }

    /**
     * As the keys of a GeoTIFF file say it, by code or piece by piece.
     *
     * @param tags the metadata of the file's first image, whichever TIFF reader made it
     * @return no value and a problem where the keys name no system, or one that cannot be used
     */
    public static Checked<GridSystem> ofGeoTiff(IIOMetadata tags, CoordinateSystem round, SourcePlace place) {
        return stated(tags)
                .map(found -> joined(name(found), found, round, place))
                .orElseGet(() -> Checked.failed(missing(place)));
    }

    /** Empty where the keys name no system. The foreign decoder declares any exception and throws many on damaged keys. */
    private static Optional<CoordinateReferenceSystem> stated(IIOMetadata tags) {
        try {
            return Optional.ofNullable(
                    new GeoTiffMetadata2CRSAdapter(new Hints(Hints.FORCE_LONGITUDE_FIRST_AXIS_ORDER, true))
                            .createCoordinateSystem(new GeoTiffIIOMetadataDecoder(tags)));
        } catch (Exception damagedKeys) {
            return Optional.empty();
        }
    }

    /** For a grid that does not say where it lies. */
    public static Problem missing(SourcePlace place) {
        return Problem.error(
                "crs-missing",
                place,
                "the grid does not state a coordinate system that can be understood",
                "a grid with its coordinate system",
                "ask whoever made it, and write its code under elevation in round.json: \"elevation\": {\"crs\":"
                        + " \"EPSG:2193\"}");
    }

    private static Checked<GridSystem> joined(
            String name, CoordinateReferenceSystem found, CoordinateSystem round, SourcePlace place) {
        CoordinateReferenceSystem flat = CRS.getHorizontalCRS(found);
        try {
            MathTransform toRound = CRS.findMathTransform(flat == null ? found : flat, round.projected(), true);
            // The inverse of the same transform: two searches can pick different datum paths and miss by metres.
            return Checked.of(new GridSystem(name, flat == null ? found : flat, toRound.inverse()));
        } catch (FactoryException | NoninvertibleTransformException noWay) {
            return Checked.failed(Problem.error(
                    "crs-not-usable",
                    place,
                    "the grid's coordinate system, " + name + ", cannot be joined to " + round.code(),
                    "a grid in a projected or geographic system with a known datum",
                    "have the grid saved again in " + round.code()));
        }
    }

    private static String name(CoordinateReferenceSystem found) {
        String name = found.getName().getCode();
        return code(found).map(code -> name + " (" + code + ")").orElse(name);
    }

    private static Optional<String> code(CoordinateReferenceSystem found) {
        try {
            return Optional.ofNullable(CRS.lookupIdentifier(found, false));
        } catch (FactoryException none) {
            return Optional.empty();
        }
    }

    private static double unitM(CoordinateReferenceSystem flat) {
        return flat.getCoordinateSystem()
                .getAxis(0)
                .getUnit()
                .asType(Length.class)
                .getConverterTo(SI.METRE)
                .convert(1);
    }

    /** Its name and code. */
    public String words() {
        return words;
    }

    /** Whether its coordinates are longitude and latitude. */
    public boolean degrees() {
        return degrees;
    }

    /** Length of its unit, metres: 0.3048 for feet; 1 where its coordinates are degrees. */
    public double unitM() {
        return unitM;
    }

    /**
     * Moves a place of the round into this system.
     *
     * @param into gets easting or longitude, then northing or latitude
     * @return whether there is such a place; else {@code into} holds nothing of use
     */
    public boolean locate(double eastM, double northM, double[] into) {
        into[0] = eastM;
        into[1] = northM;
        try {
            fromRound.transform(into, 0, into, 0, 1);
        } catch (TransformException outside) {
            return false;
        }
        return Double.isFinite(into[0]) && Double.isFinite(into[1]);
    }

    @Override
    public String toString() {
        return words;
    }
}
