package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/** Which outlined catchment each line lies in: the one that holds most of its length. Safe to share between threads. */
public final class CatchmentMembership {

    private final STRtree outlines = new STRtree();

    private record Outline(String code, Geometry area, PreparedGeometry prepared) {}

    /**
     * How much of one line lies in which outlines.
     *
     * @param code the outline with the greatest length, of equal ones the first by code; empty where none holds any
     * @param insideM metres of the line inside that outline
     * @param lengthM metres of the whole line
     */
    public record Share(Optional<String> code, double insideM, double lengthM) {

        /** Metres of the line that leave its outline. */
        public double outsideM() {
            return Math.max(0, lengthM - insideM);
        }
    }

    /**
     * Takes the outlines.
     *
     * @param areas valid areas by catchment code
     */
    public CatchmentMembership(Map<String, Geometry> areas) {
        new TreeMap<>(areas)
                .forEach((code, area) -> outlines.insert(
                        area.getEnvelopeInternal(), new Outline(code, area, PreparedGeometryFactory.prepare(area))));
        outlines.build();
    }

    /** The outline that holds most of a line. */
    public Share of(LineString line) {
        double bestM = 0;
        Optional<String> best = Optional.empty();
        for (Outline outline : near(line)) {
            double insideM = insideM(outline, line);
            if (insideM > bestM) {
                bestM = insideM;
                best = Optional.of(outline.code());
            }
        }
        return new Share(best, bestM, line.getLength());
    }

    private List<Outline> near(LineString line) {
        List<Outline> near = new ArrayList<>();
        for (Object found : outlines.query(line.getEnvelopeInternal())) {
            near.add((Outline) found);
        }
        near.sort(Comparator.comparing(Outline::code));
        return near;
    }

    private static double insideM(Outline outline, LineString line) {
        if (outline.prepared().covers(line)) {
            return line.getLength();
        }
        return outline.prepared().intersects(line)
                ? outline.area().intersection(line).getLength()
                : 0;
    }
}
