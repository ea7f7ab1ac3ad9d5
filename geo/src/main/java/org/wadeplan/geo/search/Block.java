package org.wadeplan.geo.search;

/**
 * A stretch of a run that a hindrance covers.
 *
 * @param run number of the run
 * @param fromM upper end, metres from the run's upper end
 * @param toM lower end
 * @param hindrance its number
 * @param fromDistM distance along the network from the hindrance to the upper end, metres; -1 where it is measured straight
 *     or is no distance
 * @param toDistM to the lower end; between the two it rises or falls evenly
 */
record Block(int run, double fromM, double toM, int hindrance, double fromDistM, double toDistM) {

    static Block covering(int run, double fromM, double toM, int hindrance) {
        return new Block(run, fromM, toM, hindrance, -1, -1);
    }

    boolean isAlong() {
        return fromDistM >= 0;
    }

    private double distM(double atM) {
        return fromDistM + (toDistM - fromDistM) * (atM - fromM) / (toM - fromM);
    }

    /** Least distance along the network between two measures within the block. */
    double nearestM(double lowM, double highM) {
        return Math.min(distM(Math.max(lowM, fromM)), distM(Math.min(highM, toM)));
    }

    /** The part nearer than a distance; null is never given: an empty part has no length. */
    Block nearerThan(double clearM) {
        if (fromDistM < clearM && toDistM < clearM) {
            return this;
        }
        if (fromDistM >= clearM && toDistM >= clearM) {
            return new Block(run, fromM, fromM, hindrance, fromDistM, fromDistM);
        }
        double share = (clearM - fromDistM) / (toDistM - fromDistM);
        double cutM = fromM + share * (toM - fromM);
        return fromDistM < clearM
                ? new Block(run, fromM, cutM, hindrance, fromDistM, clearM)
                : new Block(run, cutM, toM, hindrance, clearM, toDistM);
    }

    boolean hasLength() {
        return toM > fromM;
    }
}
