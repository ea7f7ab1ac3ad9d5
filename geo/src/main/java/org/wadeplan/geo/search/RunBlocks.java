package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The blocks of every run, from its upper end down. */
final class RunBlocks {

    private static final Comparator<Block> DOWN = Comparator.comparingDouble(Block::fromM)
            .thenComparingDouble(Block::toM)
            .thenComparingInt(Block::hindrance);

    private final List<List<Block>> byRun;

    private RunBlocks(List<List<Block>> byRun) {
        this.byRun = byRun;
    }

    static RunBlocks of(int runs, Iterable<Block> blocks) {
        List<List<Block>> byRun = new ArrayList<>(runs);
        for (int run = 0; run < runs; run++) {
            byRun.add(List.of());
        }
        for (Block block : blocks) {
            if (block.hasLength()) {
                if (byRun.get(block.run()).isEmpty()) {
                    byRun.set(block.run(), new ArrayList<>(4));
                }
                byRun.get(block.run()).add(block);
            }
        }
        byRun.forEach(list -> {
            if (list.size() > 1) {
                list.sort(DOWN);
            }
        });
        return new RunBlocks(byRun);
    }

    List<Block> of(int run) {
        return byRun.get(run);
    }

    /** What no block covers, as pairs of measures from the upper end down. */
    List<double[]> free(int run, double lengthM) {
        List<double[]> free = new ArrayList<>();
        double clearFromM = 0;
        for (Block block : byRun.get(run)) {
            if (block.fromM() > clearFromM) {
                free.add(new double[] {clearFromM, block.fromM()});
            }
            clearFromM = Math.max(clearFromM, block.toM());
        }
        if (lengthM > clearFromM) {
            free.add(new double[] {clearFromM, lengthM});
        }
        return free;
    }
}
