package org.wadeplan.geo.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A table of figures: figure, goal, ours, peer, ratio, holds. */
final class FigureTable {

    private static final String NOT_MEASURED = "not measured";

    private final List<String[]> rows = new ArrayList<>();
    private boolean fallsShort;

    FigureTable() {
        rows.add(new String[] {"figure", "goal", "ours", "peer", "ratio", "holds"});
    }

    /** A figure with no goal of its own. */
    void figure(String figure, String ours, Optional<String> peer, String ratio) {
        rows.add(new String[] {figure, "", ours, peer.orElse(NOT_MEASURED), ratio, ""});
    }

    /** A figure with a goal that it reaches or not. */
    void goal(String figure, String goal, String ours, String peer, String ratio, boolean holds) {
        rows.add(new String[] {figure, goal, ours, peer, ratio, holds ? "yes" : "NO"});
        fallsShort |= !holds;
    }

    /** A goal that only the peer can tell, where there is no peer. */
    void notMeasured(String figure, String goal, String ours) {
        rows.add(new String[] {figure, goal, ours, NOT_MEASURED, NOT_MEASURED, NOT_MEASURED});
    }

    boolean fallsShort() {
        return fallsShort;
    }

    @Override
    public String toString() {
        int[] width = new int[rows.get(0).length];
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                width[i] = Math.max(width[i], row[i].length());
            }
        }
        StringBuilder text = new StringBuilder();
        for (String[] row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.length; i++) {
                String gap = " ".repeat(width[i] - row[i].length());
                boolean words = i == 0 || i == 1 || i == 5;
                line.append(words ? row[i] + gap : gap + row[i]).append("  ");
            }
            text.append(line.toString().stripTrailing()).append(System.lineSeparator());
        }
        return text.toString();
    }
}
