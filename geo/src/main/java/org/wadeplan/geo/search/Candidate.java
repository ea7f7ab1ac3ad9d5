package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.reach.LengthBand;
import org.wadeplan.geo.reach.ReachRule;

/**
 * A reach that could be laid.
 *
 * @param rank 1 for the best
 * @param start its downstream end
 * @param stretches what it covers, from its start upwards
 * @param rule its length and pieces
 * @param sizeWords how its length came about
 * @param score how good it is, and why
 * @param facts what is known of it
 * @param band how long it probably is on the ground
 * @param notChecked limits on figures that nobody knows here, in words
 */
public record Candidate(
        int rank,
        LinePlace start,
        List<LineStretch> stretches,
        ReachRule rule,
        String sizeWords,
        Score score,
        StretchFacts facts,
        LengthBand band,
        List<String> notChecked) {

    public Candidate {
        stretches = List.copyOf(stretches);
        notChecked = List.copyOf(notChecked);
    }

    /** Its line from its start upwards. */
    public LineString line(LineSet lines) {
        List<Coordinate> vertices = new ArrayList<>();
        for (LineStretch stretch : stretches) {
            LineString up = lines.between(stretch.line(), /* fromM= */ stretch.toM(), /* toM= */ stretch.fromM());
            for (Coordinate vertex : up.getCoordinates()) {
                if (vertices.isEmpty() || !vertices.get(vertices.size() - 1).equals2D(vertex)) {
                    vertices.add(vertex);
                }
            }
        }
        return new GeometryFactory().createLineString(vertices.toArray(Coordinate[]::new));
    }

    /** The place so many metres upstream of its start. */
    public LinePlace upstream(double upstreamM) {
        double leftM = upstreamM;
        for (LineStretch stretch : stretches) {
            if (leftM <= stretch.lengthM()) {
                return new LinePlace(stretch.line(), stretch.toM() - leftM);
            }
            leftM -= stretch.lengthM();
        }
        LineStretch last = stretches.get(stretches.size() - 1);
        return new LinePlace(last.line(), last.fromM());
    }
}
