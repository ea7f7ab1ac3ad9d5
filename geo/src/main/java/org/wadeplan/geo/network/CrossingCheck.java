package org.wadeplan.geo.network;

import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.Problem;

/** Notes where lines cross without being joined. */
final class CrossingCheck {

    private final StreamGraph graph;
    private final List<DrawnPiece> pieces;
    private final StreamRules rules;
    private final SuspectedFaults faults;

    /** For a graph whose line numbers are positions among the pieces. */
    CrossingCheck(StreamGraph graph, List<DrawnPiece> pieces, StreamRules rules, SuspectedFaults faults) {
        this.graph = graph;
        this.pieces = pieces;
        this.rules = rules;
        this.faults = faults;
    }

    void check() {
        for (LineCrossings.Crossing crossing : LineCrossings.of(graph.lines())) {
            if (!isAtNode(crossing.one(), crossing) && !isAtNode(crossing.other(), crossing)) {
                note(crossing);
            }
        }
    }

    /** An end that was snapped may stand a little beyond the line that it joins. */
    private boolean isAtNode(LinePlace place, LineCrossings.Crossing crossing) {
        int piece = graph.pieceAt(place.line(), place.chainageM());
        return isNear(graph.fromNode(piece), crossing.at()) || isNear(graph.toNode(piece), crossing.at());
    }

    private boolean isNear(int node, MetricPoint at) {
        return graph.nodeAt(node).distanceM(at) <= rules.snapToleranceM() && graph.isConfluence(node);
    }

    private void note(LineCrossings.Crossing crossing) {
        faults.add(Problem.note(
                "stream-crossing",
                pieces.get(crossing.one().line()).place(),
                String.format(
                        Locale.ROOT,
                        "it crosses %s near %.0f, %.0f without a vertex in common: taken as one over the other, not as"
                                + " a junction",
                        pieces.get(crossing.other().line()).code(),
                        crossing.at().eastM(),
                        crossing.at().northM()),
                "",
                "nothing if that is right; if they meet, draw a vertex of both there"));
    }
}
