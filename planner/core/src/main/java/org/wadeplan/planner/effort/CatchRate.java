package org.wadeplan.planner.effort;

/**
 * What a catch means against its effort. One pass gives an index: how many there were stays unknown.
 *
 * @param fish counted, from 0
 * @param lengthM length of the reach
 * @param widthM mean wetted width
 * @param shockS button seconds
 */
public record CatchRate(int fish, double lengthM, double widthM, double shockS) {

    public CatchRate {
        if (fish < 0 || !(lengthM > 0) || !(widthM > 0) || !(shockS > 0)) {
            throw new IllegalArgumentException("A rate needs a count from 0, and length, width and seconds above 0");
        }
    }

    /** Fish in each square metre: N/(L x width). */
    public double perM2() {
        return fish / (lengthM * widthM);
    }

    /** Fish in 100 square metres. */
    public double per100M2() {
        return 100 * perM2();
    }

    /** Fish in each hour of button time: count/(seconds/3600). */
    public double perHour() {
        return fish / (shockS / 3600);
    }

    /** Fish in each minute of button time. */
    public double perMin() {
        return perHour() / 60;
    }
}
