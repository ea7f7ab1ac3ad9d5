package org.wadeplan.geo.draw;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.problem.SourcePlace;

/** Frames to draw from. */
enum DrawFrames {
    /** Invented, so that every machine has it. */
    INVENTED,
    /** United States flowlines (CC0), which are no part of the project: skipped where they are absent. */
    NEW_HOPE;

    private static final Path DATA = Path.of("..", "..", "shared", "data", "usgs_new_hope.gpkg");

    /** All lines in one stratum. */
    DrawFrame whole() {
        return this == INVENTED ? FrameCutter.cut(InventedStreams.lines(3), List.of(), List.of()) : newHope(false);
    }

    /** The stratum of a line is its stream order; of an invented one, small or large. */
    DrawFrame byOrder() {
        if (this == NEW_HOPE) {
            return newHope(true);
        }
        LineSet lines = InventedStreams.lines(3);
        List<FrameCutter.Part> parts = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            String id = lines.id(line);
            int cells = Integer.parseInt(id.substring(id.lastIndexOf('-') + 1));
            parts.add(new FrameCutter.Part(line, 0, lines.lengthM(line), cells < 10 ? "small" : "large"));
        }
        return FrameCutter.cut(lines, parts, List.of());
    }

    private static DrawFrame newHope(boolean byOrder) {
        assumeTrue(
                Files.isRegularFile(DATA),
                "skipped: the open data file " + DATA.getFileName() + " is not beside the project, in ../shared/data");
        List<Feature> features = new GeoPackageReader(DATA, SourcePlace.file("usgs_new_hope.gpkg"))
                .read("nhdplus_flowline")
                .value()
                .orElseThrow()
                .features();
        LineSetBuilder builder = new LineSetBuilder();
        for (Feature feature : features) {
            builder.add(feature.text("comid").orElseThrow(), (LineString)
                    feature.geometry().orElseThrow().getGeometryN(0));
        }
        LineSet lines = builder.build();
        List<FrameCutter.Part> parts = new ArrayList<>();
        for (int line = 0; byOrder && line < lines.lineCount(); line++) {
            long order = Math.round(
                    Double.parseDouble(features.get(line).text("streamorde").orElseThrow()));
            parts.add(new FrameCutter.Part(line, 0, lines.lengthM(line), Long.toString(order)));
        }
        return FrameCutter.cut(lines, parts, List.of());
    }
}
