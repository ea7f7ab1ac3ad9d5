package org.wadeplan.geo.lines;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which reaches of a cut lie too near to a node, and how near.
 *
 * <p>Two ways to measure, which give different reaches: straight, from the node to the nearest point of the reach, whatever
 * line the reach lies on, so a reach beside another stream's confluence falls out too; or along the line, from where the
 * node touches the reach's own line. A reach exactly at the limit is too near. Immutable; safe to share between threads.
 */
public final class ReachClearance {

    private static final int BLOCK_NODES = 2048;

    private final double[] nearestM;
    private final int[] nearestNode;

    private ReachClearance(int reaches) {
        this.nearestM = new double[reaches];
        this.nearestNode = new int[reaches];
        Arrays.fill(nearestM, Double.POSITIVE_INFINITY);
        Arrays.fill(nearestNode, -1);
    }

    /**
     * By straight distance in the plane.
     *
     * @param index of the same lines that were cut
     * @param clearM reaches up to and including this far from a node are too near
     */
    public static ReachClearance straight(ReachCut cut, PackedSegmentIndex index, LineNodes nodes, double clearM) {
        if (index.lines() != cut.lines()) {
            throw new IllegalArgumentException("The index is of other lines than the reaches");
        }
        int blocks = (nodes.nodeCount() + BLOCK_NODES - 1) / BLOCK_NODES;
        List<ReachesNear> found = IntStream.range(0, blocks)
                .parallel()
                .mapToObj(block -> {
                    ReachesNear near = new ReachesNear(cut, clearM);
                    int end = Math.min(nodes.nodeCount(), (block + 1) * BLOCK_NODES);
                    for (int node = block * BLOCK_NODES; node < end; node++) {
                        near.look(index, node, nodes.eastM(node), nodes.northM(node));
                    }
                    return near;
                })
                .toList();
        ReachClearance clearance = new ReachClearance(cut.reachCount());
        found.forEach(near -> near.each(clearance::offer));
        return clearance;
    }

    /**
     * By distance along the reach's own line from where a node touches it.
     *
     * @param clearM reaches up to and including this far from a node are too near
     */
    public static ReachClearance along(ReachCut cut, LineNodes nodes, double clearM) {
        ReachClearance clearance = new ReachClearance(cut.reachCount());
        ReachesNear near = new ReachesNear(cut, clearM);
        for (int node = 0; node < nodes.nodeCount(); node++) {
            for (int touch = 0; touch < nodes.touchCount(node); touch++) {
                near.along(node, nodes.touchLine(node, touch), nodes.touchM(node, touch));
            }
        }
        near.each(clearance::offer);
        return clearance;
    }

    public boolean isKept(int reach) {
        return nearestNode[reach] < 0;
    }

    public int keptCount() {
        return (int) Arrays.stream(nearestNode).filter(node -> node < 0).count();
    }

    /** The node nearest to a reach that is not kept, at the same distance the one with the smaller number; else -1. */
    public int nearestNode(int reach) {
        return nearestNode[reach];
    }

    /** Metres to that node; infinite for a reach that is kept. */
    public double nearestM(int reach) {
        return nearestM[reach];
    }

    private void offer(int reach, int node, double distanceM) {
        boolean nearer = distanceM < nearestM[reach];
        if (nearer || (distanceM == nearestM[reach] && node < nearestNode[reach])) {
            nearestM[reach] = distanceM;
            nearestNode[reach] = node;
        }
    }
}
