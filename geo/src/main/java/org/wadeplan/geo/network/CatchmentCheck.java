package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Holds the catchment that a stream file names against the outline in which the line lies. */
public final class CatchmentCheck {

    /** Outlines are drawn more coarsely than streams: up to this many metres outside is no finding; common practice. */
    private static final double COARSE_M = 100;

    private CatchmentCheck() {}

    /**
     * Streams that lie mostly in another outline than they say, and streams that leave their own.
     *
     * @param areas outlines by catchment code; streams of a catchment without an outline are passed over
     * @param file how problems name the stream file
     */
    public static List<Problem> of(StreamNetwork network, Map<String, Geometry> areas, SourcePlace file) {
        CatchmentMembership membership = new CatchmentMembership(areas);
        List<Problem> problems = new ArrayList<>();
        for (StreamLine stream : network.lines()) {
            Geometry own = areas.get(stream.catchment());
            if (own == null) {
                continue;
            }
            CatchmentMembership.Share share = membership.of(stream.line());
            if (!share.code().map(stream.catchment()::equals).orElse(false)) {
                problems.add(elsewhere(stream, share, file));
            } else if (share.outsideM() > COARSE_M) {
                problems.add(leaves(stream, own, share, file));
            }
        }
        return problems;
    }

    private static Problem elsewhere(StreamLine stream, CatchmentMembership.Share share, SourcePlace file) {
        String where = share.code()
                .map(code -> String.format(
                        Locale.ROOT, "%.0f of its %.0f m lie in %s", share.insideM(), share.lengthM(), code))
                .orElse("it lies in no outline at all");
        return Problem.warning(
                "stream-in-other-catchment",
                file.row(stream.code()).column("catchment"),
                "the file says " + stream.catchment() + ", but " + where,
                "the catchment that holds most of the line",
                "check the catchment and the outlines: permits and cleaning go by the catchment");
    }

    private static Problem leaves(StreamLine stream, Geometry own, CatchmentMembership.Share share, SourcePlace file) {
        Coordinate first = stream.line().difference(own).getCoordinate();
        return Problem.note(
                "stream-leaves-catchment",
                file.row(stream.code()).column("catchment"),
                String.format(
                        Locale.ROOT,
                        "%.0f of its %.0f m lie outside the outline of %s, from %.0f, %.0f on",
                        share.outsideM(),
                        share.lengthM(),
                        stream.catchment(),
                        first.x,
                        first.y),
                "",
                "nothing if the outline is coarse; if not, check both");
    }
}
