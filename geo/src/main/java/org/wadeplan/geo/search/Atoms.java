package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Parts a run where blocks begin and end, so that every part has one set of reasons. */
final class Atoms {

    /**
     * A part of a run.
     *
     * @param fromM upper end
     * @param toM lower end
     * @param blocks that cover it; empty where it is free
     */
    record Atom(double fromM, double toM, List<Block> blocks) {}

    private Atoms() {}

    /** From the upper end down, without gaps. */
    static List<Atom> of(List<Block> downBlocks, double lengthM) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, lengthM));
        for (Block block : downBlocks) {
            cuts.add(Math.min(lengthM, Math.max(0, block.fromM())));
            cuts.add(Math.min(lengthM, Math.max(0, block.toM())));
        }
        List<Atom> atoms = new ArrayList<>();
        List<Block> active = new ArrayList<>();
        int next = 0;
        Double lastM = cuts.pollFirst();
        for (double cutM : cuts) {
            double fromM = lastM;
            while (next < downBlocks.size() && downBlocks.get(next).fromM() <= fromM) {
                active.add(downBlocks.get(next++));
            }
            active.removeIf(block -> block.toM() <= fromM);
            atoms.add(new Atom(fromM, cutM, List.copyOf(active)));
            lastM = cutM;
        }
        return atoms;
    }
}
