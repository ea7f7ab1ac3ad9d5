package org.wadeplan.hazards.limits;

/**
 * The body of one wader. Personal: used to compute, never printed.
 *
 * @param heightM height, m
 * @param massKg mass, kg
 */
public record Wader(double heightM, double massKg) {

    double heightMassMKg() {
        return heightM * massKg;
    }
}
