package org.wadeplan.geo.access;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;

/** Which parcels without consent a straight walk crosses. */
final class LandCrossed {

    /** A walk that only brushes a boundary does not cross the parcel. */
    private static final double BRUSH_M = 0.5;

    private record Entered(String parcel, double afterM) {}

    private final STRtree withoutConsent = new STRtree();

    LandCrossed(List<Land> all) {
        for (Land land : all) {
            if (!land.consented() && !land.area().isEmpty()) {
                withoutConsent.insert(land.area().getEnvelopeInternal(), land);
            }
        }
        withoutConsent.build();
    }

    /** By id, in walking order; those entered at the same step by id. */
    List<String> by(StraightWalk walk) {
        List<?> near = withoutConsent.query(walk.box());
        return near.stream()
                .map(Land.class::cast)
                .flatMap(land -> entered(walk, land).stream())
                .sorted(Comparator.comparingDouble(Entered::afterM).thenComparing(Entered::parcel))
                .map(Entered::parcel)
                .distinct()
                .toList();
    }

    private static List<Entered> entered(StraightWalk walk, Land land) {
        Geometry inside = land.area().intersection(walk.shape());
        if (inside.isEmpty() || (!walk.isNone() && inside.getLength() < BRUSH_M)) {
            return List.of();
        }
        Coordinate leave = StraightWalk.coordinate(walk.leave());
        double afterM = Arrays.stream(inside.getCoordinates())
                .mapToDouble(leave::distance)
                .min()
                .orElse(0);
        return List.of(new Entered(land.parcel(), afterM));
    }
}
