package org.wadeplan.planner.files;

import java.nio.file.Path;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.terrain.Elevation;
import org.wadeplan.geo.terrain.ElevationFile;
import org.wadeplan.geo.terrain.ElevationGrid;

/** Reads the round's grid of elevations around its streams, which it may do without. */
record GroundReader(RoundFolder folder, CoordinateSystem crs) {

    /** Heights are wanted along the walk from the road too. */
    private static final double AROUND_M = 2000;

    private static final int MOST_LOOKED_UP = 20_000;

    /** A missing cell or two at the edge of the sea is nothing to speak of. */
    private static final double ENOUGH = 0.995;

    /** The grid, or none; never without a value, so that a broken grid hides no other problem. */
    Checked<Optional<ElevationGrid>> read(StreamNetwork network) {
        if (!folder.wants(RoundFolder.ELEVATION)) {
            return Checked.of(Optional.empty());
        }
        Path file = folder.path(RoundFolder.ELEVATION);
        LineSet lines = network.graph().lines();
        Checked<ElevationGrid> grid = FileLimit.MAP
                .refusal(file, name())
                .<Checked<ElevationGrid>>map(Checked::failed)
                .orElseGet(() -> ElevationFile.read(
                        file, SourcePlace.file(name()), crs, folder.settings().elevation(), Optional.of(area(lines))));
        return Checked.of(grid.value(), grid.problems())
                .with(grid.value().flatMap(heights -> coverage(heights, lines)).stream()
                        .toList());
    }

    private String name() {
        return folder.nameOf(RoundFolder.ELEVATION);
    }

    private static Envelope area(LineSet lines) {
        Envelope area = new Envelope();
        for (int vertex = 0; vertex < lines.vertexCount(); vertex++) {
            area.expandToInclude(lines.eastM(vertex), lines.northM(vertex));
        }
        area.expandBy(AROUND_M);
        return area;
    }

    private Optional<Problem> coverage(Elevation heights, LineSet lines) {
        int stride = 1 + lines.vertexCount() / MOST_LOOKED_UP;
        int looked = 0;
        int known = 0;
        for (int vertex = 0; vertex < lines.vertexCount(); vertex += stride) {
            looked++;
            known += heights.elevationM(new MetricPoint(lines.eastM(vertex), lines.northM(vertex)))
                            .isPresent()
                    ? 1
                    : 0;
        }
        return looked == 0 || known >= ENOUGH * looked ? Optional.empty() : Optional.of(partly(100 * known / looked));
    }

    private Problem partly(int percent) {
        return Problem.warning(
                "grid-covers-part",
                SourcePlace.file(name()),
                percent == 0
                        ? "the grid has heights along hardly any of the stream lines, less than 1 %"
                        : "the grid has heights along " + percent + " % of the stream lines",
                "heights wherever the round's streams run",
                "slopes and climbs elsewhere stay unknown; add the neighbouring tiles if they matter");
    }
}
