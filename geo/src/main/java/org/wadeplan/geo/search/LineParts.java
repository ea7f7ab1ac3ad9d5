package org.wadeplan.geo.search;

import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.StreamGraph;

/** Parts stretches of lines at the nodes and tells which run each part belongs to. */
final class LineParts {

    /** Hears of one part. */
    @FunctionalInterface
    interface Part {
        void of(int run, double fromM, double toM);
    }

    private final StreamGraph graph;
    private final Runs runs;

    LineParts(Runs runs) {
        this.runs = runs;
        this.graph = runs.graph();
    }

    LineSet lines() {
        return graph.lines();
    }

    void split(LineStretch stretch, Part part) {
        int end = graph.endPiece(stretch.line());
        for (int piece = graph.pieceAt(stretch.line(), stretch.fromM()); piece < end; piece++) {
            double fromM = Math.max(stretch.fromM(), graph.fromM(piece));
            double toM = Math.min(stretch.toM(), graph.toM(piece));
            if (toM > fromM) {
                part.of(runs.runOf(piece), runs.measureM(piece, fromM), runs.measureM(piece, toM));
            }
            if (graph.toM(piece) >= stretch.toM()) {
                return;
            }
        }
    }
}
