package org.wadeplan.geo.network;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.lines.PackedSegmentIndex;

/** Nodes and indexes the lines of a network when somebody asks for the first time. Safe to share between threads. */
final class NodedOnce {

    private final List<StreamLine> streams;
    private final double snapToleranceM;
    private Optional<LineSet> lines = Optional.empty();
    private Optional<StreamGraph> graph = Optional.empty();
    private Optional<PackedSegmentIndex> index = Optional.empty();

    NodedOnce(List<StreamLine> streams, double snapToleranceM) {
        this.streams = streams;
        this.snapToleranceM = snapToleranceM;
    }

    synchronized StreamGraph graph() {
        StreamGraph made = graph.orElseGet(() -> StreamNoding.graph(lines(), snapToleranceM));
        graph = Optional.of(made);
        return made;
    }

    synchronized PackedSegmentIndex index() {
        PackedSegmentIndex made = index.orElseGet(() -> new PackedSegmentIndex(lines()));
        index = Optional.of(made);
        return made;
    }

    private LineSet lines() {
        LineSet made = lines.orElseGet(() -> lines(streams));
        lines = Optional.of(made);
        return made;
    }

    /** The same lines under the same numbers, their codes as ids. */
    static LineSet lines(List<StreamLine> streams) {
        LineSetBuilder lines = new LineSetBuilder();
        for (StreamLine stream : streams) {
            if (!lines.add(stream.code(), stream.line())) {
                throw new IllegalStateException("A measured line has a length: " + stream.code());
            }
        }
        return lines.build();
    }
}
