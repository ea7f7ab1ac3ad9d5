package org.wadeplan.geo.search;

import java.util.List;
import java.util.function.DoubleConsumer;

/** Where reaches fit on one run. All measures are metres from the run's upper end. */
final class Fitting {

    /** A stretch this much shorter than a reach still holds it, in metres: a difference of rounding. */
    static final double ROUNDING_M = 1e-6;

    private Fitting() {}

    static boolean holds(double[] free, double fromM, double toM) {
        return free[0] <= fromM + ROUNDING_M && free[1] >= toM - ROUNDING_M;
    }

    static boolean holdsOne(double[] free, double lengthM) {
        return free[1] - free[0] >= lengthM - ROUNDING_M;
    }

    /** Starts that a layout offers, from the lower end of each free stretch up. */
    static void starts(
            SearchRules.Layout layout, List<double[]> free, double runLengthM, double lengthM, DoubleConsumer found) {
        if (layout instanceof SearchRules.Fitted fitted) {
            free.stream()
                    .filter(stretch -> holdsOne(stretch, lengthM))
                    .forEach(stretch -> along(stretch, lengthM, fitted.stepM(), found));
        } else {
            endToEnd(free, runLengthM, lengthM, found);
        }
    }

    private static void along(double[] stretch, double lengthM, double stepM, DoubleConsumer found) {
        double highestM = stretch[0] + lengthM;
        int steps = (int) Math.floor((stretch[1] - highestM) / stepM + ROUNDING_M);
        for (int step = 0; step <= steps; step++) {
            found.accept(stretch[1] - step * stepM);
        }
        if (stretch[1] - steps * stepM - highestM > ROUNDING_M) {
            found.accept(highestM);
        }
    }

    /** Those of the reaches laid end to end that touch nothing ruled out. */
    static void endToEnd(List<double[]> free, double runLengthM, double lengthM, DoubleConsumer found) {
        int whole = whole(runLengthM, lengthM);
        int at = free.size() - 1;
        for (int reach = 0; reach < whole; reach++) {
            double toM = runLengthM - reach * lengthM;
            double fromM = Math.max(0, toM - lengthM);
            while (at >= 0 && free.get(at)[0] >= toM - ROUNDING_M) {
                at--;
            }
            if (at >= 0 && holds(free.get(at), fromM, toM)) {
                found.accept(toM);
            }
        }
    }

    /** How many reaches fit onto a run end to end. */
    static int whole(double runLengthM, double lengthM) {
        return Double.isInfinite(lengthM) ? 0 : (int) Math.floor((runLengthM + ROUNDING_M) / lengthM);
    }
}
