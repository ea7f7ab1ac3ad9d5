package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which lines hang together, however far apart along them. */
public final class ConnectedLines {

    private ConnectedLines() {}

    /** Groups of line numbers, each rising, by their smallest; every line stands in one group. */
    public static List<int[]> of(StreamGraph graph) {
        int[] group = groupOfLines(graph);
        int groups = 0;
        for (int each : group) {
            groups = Math.max(groups, each + 1);
        }
        int[] size = new int[groups];
        for (int each : group) {
            size[each]++;
        }
        List<int[]> connected = new ArrayList<>(groups);
        for (int each = 0; each < groups; each++) {
            connected.add(new int[size[each]]);
        }
        Arrays.fill(size, 0);
        for (int line = 0; line < group.length; line++) {
            connected.get(group[line])[size[group[line]]++] = line;
        }
        return connected;
    }

    /** The number of each line's group, counted in the order of their first lines. */
    private static int[] groupOfLines(StreamGraph graph) {
        int[] sameAs = new int[graph.nodeCount()];
        Arrays.setAll(sameAs, node -> node);
        for (int piece = 0; piece < graph.pieceCount(); piece++) {
            sameAs[root(sameAs, graph.fromNode(piece))] = root(sameAs, graph.toNode(piece));
        }
        int[] number = new int[graph.nodeCount()];
        Arrays.fill(number, -1);
        int[] group = new int[graph.lines().lineCount()];
        int groups = 0;
        for (int line = 0; line < group.length; line++) {
            int root = root(sameAs, graph.fromNode(graph.firstPiece(line)));
            if (number[root] < 0) {
                number[root] = groups++;
            }
            group[line] = number[root];
        }
        return group;
    }

    private static int root(int[] sameAs, int node) {
        int at = node;
        while (sameAs[at] != at) {
            sameAs[at] = sameAs[sameAs[at]];
            at = sameAs[at];
        }
        return at;
    }
}
