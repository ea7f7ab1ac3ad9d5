package org.wadeplan.geo.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.io.GeoPackageLines;
import org.wadeplan.geo.lines.CutRule;
import org.wadeplan.geo.lines.LineNodes;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.PackedSegmentIndex;
import org.wadeplan.geo.lines.ReachClearance;
import org.wadeplan.geo.lines.ReachCut;
import org.wadeplan.geo.lines.SegmentIndex.Snap;
import org.wadeplan.geo.problem.SourcePlace;

/** All steps done once by the project's own classes. */
final class OurRun {

    static final CutRule RULE = new CutRule(150, 10, CutRule.From.LAST_VERTEX);
    static final int CONFLUENCE_ENDS = 3;
    static final double CLEAR_M = 50;

    private static final int PLACES = 10_000;

    private final Map<Step, Double> seconds = new EnumMap<>(Step.class);
    private double processorSeconds;

    private OurRun() {}

    static Run of(Path file) {
        return new OurRun().all(file);
    }

    private Run all(Path file) {
        LineSet lines = timed(Step.LOAD, () -> load(file));
        List<MetricPoint> places = places(lines);
        PackedSegmentIndex index = timed(Step.INDEX, () -> new PackedSegmentIndex(lines));
        List<List<Snap>> snaps = timed(Step.SNAP, () -> index.nearestOfEach(places, 1, Double.POSITIVE_INFINITY));
        ReachCut cut = timed(Step.CUT, () -> new ReachCut(lines, RULE));
        LineNodes nodes = timed(Step.MEET, () -> LineNodes.whereEndsMeet(lines, CONFLUENCE_ENDS));
        ReachClearance clearance = timed(Step.CLEAR, () -> ReachClearance.straight(cut, index, nodes, CLEAR_M));
        MetricPoint mean = cut.meanStation();
        Run.Counts counts = new Run.Counts(
                lines.lineCount(),
                cut.reachCount(),
                cut.stationCount(),
                nodes.nodeCount(),
                clearance.keptCount(),
                snaps.stream().mapToDouble(snap -> snap.get(0).distanceM()).sum() / PLACES,
                mean.eastM(),
                mean.northM());
        return new Run(counts, seconds, processorSeconds);
    }

    private <T> T timed(Step step, Supplier<T> work) {
        long start = System.nanoTime();
        long processorStart = processorNanos();
        T made = work.get();
        seconds.put(step, (System.nanoTime() - start) / 1e9);
        processorSeconds += (processorNanos() - processorStart) / 1e9;
        return made;
    }

    private static long processorNanos() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    static LineSet load(Path file) {
        return new GeoPackageLines(file, SourcePlace.file(file.getFileName().toString()))
                .read(InventedFile.LAYER)
                .value()
                .orElseThrow()
                .lines();
    }

    /** Places spread evenly over the box around all lines, always the same. */
    static List<MetricPoint> places(LineSet lines) {
        double west = Double.POSITIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (int vertex = 0; vertex < lines.vertexCount(); vertex++) {
            west = Math.min(west, lines.eastM(vertex));
            east = Math.max(east, lines.eastM(vertex));
            south = Math.min(south, lines.northM(vertex));
            north = Math.max(north, lines.northM(vertex));
        }
        SplittableRandom random = new SplittableRandom(10_000);
        List<MetricPoint> places = new ArrayList<>(PLACES);
        for (int i = 0; i < PLACES; i++) {
            places.add(new MetricPoint(
                    west + random.nextDouble() * (east - west), south + random.nextDouble() * (north - south)));
        }
        return places;
    }
}
