package org.wadeplan.planner.pack.map;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.planner.pack.map.Drawing.Anchor;
import org.wadeplan.planner.round.Parcel;

/** Parcels: dashed outlines, hatched and worded where consent is anything but a plain yes. */
final class ParcelHatch {

    private static final double HATCH_MM = 4;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private final MapFrame frame;
    private final Drawing drawing;
    private final LineString reach;

    ParcelHatch(MapFrame frame, Drawing drawing, LineString reach) {
        this.frame = frame;
        this.drawing = drawing;
        this.reach = reach;
    }

    void draw(List<Parcel> parcels) {
        Geometry window = SHAPES.toGeometry(frame.ground());
        for (Parcel parcel : parcels) {
            Geometry seen = parcel.area().intersection(window);
            if (!seen.isEmpty()) {
                lines(parcel.area().getBoundary().intersection(window), 0.3, "3 1.5");
                boolean consented = parcel.consentStatus().filter("yes"::equals).isPresent();
                if (!consented) {
                    hatch(seen);
                }
                name(parcel, seen);
            }
        }
    }

    private void hatch(Geometry area) {
        double everyM = HATCH_MM * frame.scale() / 1000;
        double heightM = frame.ground().getHeight();
        double firstM = frame.ground().getMinX() - heightM;
        for (double at = firstM; at < frame.ground().getMaxX(); at += everyM) {
            Geometry slant = SHAPES.createLineString(new Coordinate[] {
                new Coordinate(at, frame.ground().getMinY()),
                new Coordinate(at + heightM, frame.ground().getMaxY())
            });
            lines(slant.intersection(area), 0.12, "");
        }
    }

    private void lines(Geometry found, double strokeMm, String dashes) {
        for (int i = 0; i < found.getNumGeometries(); i++) {
            List<Coordinate> points = Arrays.stream(found.getGeometryN(i).getCoordinates())
                    .map(frame::paper)
                    .toList();
            if (points.size() > 1 && dashes.isEmpty()) {
                drawing.line(points, strokeMm);
            } else if (points.size() > 1) {
                drawing.dashed(points, strokeMm, dashes);
            }
        }
    }

    private void name(Parcel parcel, Geometry seen) {
        Coordinate at = frame.paper(clearPlace(seen));
        String consent =
                parcel.consentStatus().map(status -> "consent: " + status).orElse("consent: not asked");
        drawing.label(at.x, at.y, 8.5, Anchor.CENTRED, parcel.id() + ", " + consent);
    }

    /** The place inside the parcel farthest from the reach, away from the words on the map's edges. */
    private Coordinate clearPlace(Geometry seen) {
        Envelope ground = frame.ground();
        Coordinate best = seen.getInteriorPoint().getCoordinate();
        double farthestM = 0;
        for (int column = 3; column <= 7; column++) {
            for (int row = 2; row <= 8; row++) {
                Coordinate at = new Coordinate(
                        ground.getMinX() + ground.getWidth() * column / 10,
                        ground.getMinY() + ground.getHeight() * row / 10);
                Geometry point = SHAPES.createPoint(at);
                double awayM = reach.distance(point);
                if (awayM > farthestM && seen.contains(point)) {
                    farthestM = awayM;
                    best = at;
                }
            }
        }
        return best;
    }
}
