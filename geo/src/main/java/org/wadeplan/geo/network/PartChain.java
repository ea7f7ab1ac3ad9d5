package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;

/** Many programs save every line as one of several parts; often there is one part, or each begins where the last ended. */
final class PartChain {

    private PartChain() {}

    /** The parts as one line; empty where one does not begin at the vertex where the one before it ends. */
    static Optional<LineString> chained(MultiLineString parts) {
        List<Coordinate> vertices = new ArrayList<>();
        for (int i = 0; i < parts.getNumGeometries(); i++) {
            List<Coordinate> part = Arrays.asList(parts.getGeometryN(i).getCoordinates());
            boolean follows = vertices.isEmpty()
                    || part.isEmpty()
                    || vertices.get(vertices.size() - 1).equals2D(part.get(0));
            if (!follows) {
                return Optional.empty();
            }
            vertices.addAll(vertices.isEmpty() || part.isEmpty() ? part : part.subList(1, part.size()));
        }
        return Optional.of(parts.getFactory().createLineString(vertices.toArray(new Coordinate[0])));
    }
}
