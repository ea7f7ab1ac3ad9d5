package org.wadeplan.planner.decon.schedule;

/**
 * One tub, bay, hook or shelf of a shared place at the depot.
 *
 * @param resource id of {@code decon_resources.csv}
 * @param number from 1 to {@code of}
 */
public record BenchPlace(String resource, String label, int number, int of) {

    /** {@code oxidiser tubs, no. 2 of 2}; the label alone where there is only one. */
    public String words() {
        return of == 1 ? label : label + ", no. " + number + " of " + of;
    }
}
