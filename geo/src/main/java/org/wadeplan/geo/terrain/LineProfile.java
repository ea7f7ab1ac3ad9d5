package org.wadeplan.geo.terrain;

import org.wadeplan.geo.lines.LineSet;

/**
 * Heights of the ground at equal steps along one line, from its first vertex to its last. NaN where none is known: only this
 * package sees that.
 */
final class LineProfile {

    /** Nearer stations tell no more: a stream line is not drawn that finely. */
    private static final double LEAST_STEP_M = 5;

    private final int line;
    private final double stepM;
    private final double[] heightsM;

    private LineProfile(int line, double stepM, double[] heightsM) {
        this.line = line;
        this.stepM = stepM;
        this.heightsM = heightsM;
    }

    /** Two stations to a cell: nearer ones lie between the same cells. */
    static LineProfile of(LineSet lines, int line, Ground ground) {
        double lengthM = lines.lengthM(line);
        double wantedM = Math.max(LEAST_STEP_M, ground.cellM() / 2);
        int steps = Math.max(1, (int) Math.ceil(lengthM / wantedM));
        double[] heights = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            heights[i] = ground.elevation()
                    .elevationM(lines.at(line, Math.min(lengthM, lengthM * i / steps)))
                    .orElse(Double.NaN);
        }
        return new LineProfile(line, lengthM / steps, heights);
    }

    /** The line's number. */
    int line() {
        return line;
    }

    /** Distance between neighbouring stations along the line, metres. */
    double stepM() {
        return stepM;
    }

    int stationCount() {
        return heightsM.length;
    }

    double heightM(int station) {
        return heightsM[station];
    }

    double lengthM() {
        return stepM * (heightsM.length - 1);
    }
}
