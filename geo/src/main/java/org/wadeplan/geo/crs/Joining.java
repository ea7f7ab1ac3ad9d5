package org.wadeplan.geo.crs;

import java.util.List;
import java.util.Optional;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.datum.Ellipsoid;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.referencing.CRS;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Finds the way from the system of a map file to that of the round, and says where it is only roughly known. */
final class Joining {

    /** The length of the half axis of GRS 80 and WGS 84. Datums on other ellipsoids lie up to hundreds of metres off. */
    private static final double EARTH_CENTRED_AXIS_M = 6378137;

    private final StatedSystem stated;
    private final SourcePlace place;
    private final String roundCode;

    Joining(StatedSystem stated, SourcePlace place, String roundCode) {
        this.stated = stated;
        this.place = place;
        this.roundCode = roundCode;
    }

    Checked<Reprojection> to(CoordinateReferenceSystem round) {
        Optional<Described> source = Definitions.system(stated);
        if (source.isEmpty()) {
            return Checked.failed(stated.definition().isPresent() ? notUnderstood() : unknown());
        }
        boolean degrees = source.get().inDegrees();
        try {
            return Checked.of(Reprojection.through(source.get().to(round, false), degrees));
        } catch (FactoryException noDatumShift) {
            return roughly(source.get(), round, degrees);
        }
    }

    private Checked<Reprojection> roughly(Described source, CoordinateReferenceSystem round, boolean degrees) {
        Optional<Ellipsoid> ellipsoid = Optional.ofNullable(CRS.getEllipsoid(source.system()));
        boolean centred = ellipsoid
                .filter(known -> Math.abs(known.getSemiMajorAxis() - EARTH_CENTRED_AXIS_M) < 0.5)
                .isPresent();
        if (!centred) {
            return Checked.failed(shiftUnknown(ellipsoid));
        }
        try {
            MathTransform nearly = source.to(round, true);
            return Checked.of(Reprojection.through(nearly, degrees), List.of(shiftAssumedNone()));
        } catch (FactoryException noWay) {
            return Checked.failed(unknown());
        }
    }

    private Problem unknown() {
        return Problem.error(
                "crs-unknown",
                place,
                "the file says its coordinate system is " + stated.words() + ", which cannot be turned into "
                        + roundCode,
                "a file in " + roundCode + " or in another system with an EPSG code",
                "save the file again in " + roundCode);
    }

    private Problem notUnderstood() {
        return Problem.error(
                "crs-not-understood",
                place,
                "the file describes its coordinate system, " + stated.words()
                        + ", in a way that is not understood here",
                "a projected or geographic system, best one with an EPSG code",
                "name its code under mappings in round.json (\"crs\"), or save the layer again in " + roundCode);
    }

    private Problem shiftUnknown(Optional<Ellipsoid> ellipsoid) {
        String on = ellipsoid
                .map(known -> " on the ellipsoid " + known.getName().getCode())
                .orElse("");
        return Problem.error(
                "crs-datum-shift-unknown",
                place,
                "no datum shift is known from " + stated.words() + on + ": places could lie hundreds of metres off",
                "a system on a datum with a known shift to WGS 84",
                "name the system's EPSG code under mappings in round.json (\"crs\"), or save the layer again in "
                        + roundCode);
    }

    private Problem shiftAssumedNone() {
        return Problem.warning(
                "crs-datum-shift-unknown",
                place,
                "no datum shift is known from " + stated.words()
                        + "; its datum was taken for the round's, from which it may differ by up to about 2 m",
                "a system on a datum with a known shift to WGS 84",
                "check one place in the field before trusting GPS tracks made from this round");
    }

    /** Where a place of a map file lies on WGS 84, as far as that can be told. */
    static Optional<MathTransform> toWgs84(StatedSystem stated) {
        return Definitions.system(stated).flatMap(source -> {
            try {
                return Optional.of(source.to(DefaultGeographicCRS.WGS84, true));
            } catch (FactoryException noWay) {
                return Optional.empty();
            }
        });
    }
}
