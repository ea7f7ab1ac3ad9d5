package org.wadeplan.geo.io;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Makes areas of the rings of one shapefile record.
 *
 * <p>Outer rings run clockwise, holes the other way; which hole belongs to which ring is not stored. Source: ESRI
 * Shapefile Technical Description, July 1998, page 8. A hole inside no outer ring is an outer ring drawn the wrong way.
 */
final class ShpRings {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private ShpRings() {}

    static Geometry area(List<LinearRing> rings) {
        Map<LinearRing, List<LinearRing>> holesByShell = new LinkedHashMap<>();
        List<LinearRing> turned = new ArrayList<>();
        for (LinearRing ring : rings) {
            if (rings.size() == 1 || !Orientation.isCCW(ring.getCoordinateSequence())) {
                holesByShell.put(ring, new ArrayList<>());
            } else {
                turned.add(ring);
            }
        }
        List<LinearRing> alone = new ArrayList<>();
        for (LinearRing hole : turned) {
            shellAround(hole, holesByShell).ifPresentOrElse(holes -> holes.add(hole), () -> alone.add(hole));
        }
        alone.forEach(ring -> holesByShell.put(ring, new ArrayList<>()));
        Polygon[] areas = holesByShell.entrySet().stream()
                .map(entry ->
                        SHAPES.createPolygon(entry.getKey(), entry.getValue().toArray(new LinearRing[0])))
                .toArray(Polygon[]::new);
        return areas.length == 1 ? areas[0] : SHAPES.createMultiPolygon(areas);
    }

    /** The holes of the smallest outer ring that holds it. */
    private static Optional<List<LinearRing>> shellAround(
            LinearRing hole, Map<LinearRing, List<LinearRing>> holesByShell) {
        Optional<List<LinearRing>> found = Optional.empty();
        double smallest = Double.POSITIVE_INFINITY;
        for (Map.Entry<LinearRing, List<LinearRing>> entry : holesByShell.entrySet()) {
            LinearRing shell = entry.getKey();
            double size = shell.getEnvelopeInternal().getArea();
            boolean around = shell.getEnvelopeInternal().covers(hole.getEnvelopeInternal())
                    && PointLocation.isInRing(hole.getCoordinateN(0), shell.getCoordinates());
            if (around && size < smallest) {
                smallest = size;
                found = Optional.of(entry.getValue());
            }
        }
        return found;
    }
}
