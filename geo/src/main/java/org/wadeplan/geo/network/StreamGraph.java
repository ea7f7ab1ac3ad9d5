package org.wadeplan.geo.network;

import java.util.Arrays;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/**
 * Stream lines with the places where they meet: a directed graph that cuts no line.
 *
 * <p>A node is a place where lines end or meet. A piece is the stretch of one line between two neighbouring nodes on it,
 * stored as line number and two chainages; the upper end has the smaller chainage, because every line runs downstream. A
 * tributary that joins in the middle of a line so parts that line into two pieces without changing its shape. Nodes and
 * pieces are numbered from 0; the pieces of one line follow each other downstream. Immutable.
 */
public final class StreamGraph {

    private final LineSet lines;
    private final MetricPoint[] nodes;
    private final int[] firstPiece;
    private final double[] fromM;
    private final double[] toM;
    private final int[] line;
    private final FlowTopology topology;

    /**
     * A graph; the arrays are taken over, not copied.
     *
     * @param lines all running downstream
     * @param nodes where lines end or meet
     * @param firstPiece number of each line's first piece, and one more entry: the number of pieces
     * @param fromM chainage of the upper end of each piece
     * @param toM chainage of its lower end
     * @param fromNode node at its upper end
     * @param toNode node at its lower end
     */
    StreamGraph(
            LineSet lines,
            MetricPoint[] nodes,
            int[] firstPiece,
            double[] fromM,
            double[] toM,
            int[] fromNode,
            int[] toNode) {
        this.lines = lines;
        this.nodes = nodes;
        this.firstPiece = firstPiece;
        this.fromM = fromM;
        this.toM = toM;
        this.line = new int[fromM.length];
        for (int each = 0; each < lines.lineCount(); each++) {
            Arrays.fill(line, firstPiece[each], firstPiece[each + 1], each);
        }
        this.topology = new FlowTopology(nodes.length, fromNode, toNode);
    }

    public LineSet lines() {
        return lines;
    }

    FlowTopology topology() {
        return topology;
    }

    public int nodeCount() {
        return nodes.length;
    }

    public MetricPoint nodeAt(int node) {
        return nodes[node];
    }

    public int pieceCount() {
        return fromM.length;
    }

    /** Number of the line that the piece belongs to. */
    public int line(int piece) {
        return line[piece];
    }

    /** Number of the line's first, that is uppermost, piece. */
    public int firstPiece(int ofLine) {
        return firstPiece[ofLine];
    }

    /** Number of the piece after the line's last. */
    public int endPiece(int ofLine) {
        return firstPiece[ofLine + 1];
    }

    /** Chainage along its line of the piece's upper end, metres. */
    public double fromM(int piece) {
        return fromM[piece];
    }

    /** Chainage along its line of the piece's lower end, metres. */
    public double toM(int piece) {
        return toM[piece];
    }

    public double lengthM(int piece) {
        return toM[piece] - fromM[piece];
    }

    public int fromNode(int piece) {
        return topology.fromNode(piece);
    }

    public int toNode(int piece) {
        return topology.toNode(piece);
    }

    /** The piece on which a chainage lies; at a node, the piece above it. */
    public int pieceAt(int ofLine, double chainageM) {
        int last = firstPiece[ofLine + 1] - 1;
        int found = Arrays.binarySearch(toM, firstPiece[ofLine], last, chainageM);
        return found >= 0 ? found : -found - 1;
    }

    /** How many pieces flow into a node. */
    public int arrivingCount(int node) {
        return topology.arrivingCount(node);
    }

    /** One of the pieces that flow into a node, from 0 to {@link #arrivingCount} less one, by rising number. */
    public int arriving(int node, int index) {
        return topology.arriving(node, index);
    }

    /** How many pieces flow out of a node. */
    public int leavingCount(int node) {
        return topology.leavingCount(node);
    }

    /** One of the pieces that flow out of a node, by rising number. */
    public int leaving(int node, int index) {
        return topology.leaving(node, index);
    }

    /** Whether three or more pieces meet at a node. */
    public boolean isConfluence(int node) {
        return arrivingCount(node) + leavingCount(node) >= 3;
    }
}
