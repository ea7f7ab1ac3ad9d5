package org.wadeplan.geo.bench;

/** Numbers that look random and depend on nothing but a seed and what they are for. */
final class Noise {

    private final long seed;

    Noise(long seed) {
        this.seed = seed;
    }

    /** From 0 up to but not including 1, for the thing with this number and this use of it. */
    double of(long thing, int use) {
        return (mixed(thing * 64 + use) >>> 11) * 0x1.0p-53;
    }

    /** From -1 to 1. */
    double around(long thing, int use) {
        return 2 * of(thing, use) - 1;
    }

    /** Finalizer of SplitMix64; constants from Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators. */
    private long mixed(long key) {
        long z = (key + seed) * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** A smooth hilly surface from -1 to 1: random heights on a lattice, blended between. */
    double hills(double x, double y, double wavelength, int use) {
        double column = Math.floor(x / wavelength);
        double row = Math.floor(y / wavelength);
        double across = eased(x / wavelength - column);
        double up = eased(y / wavelength - row);
        double south = blended(height(column, row, use), height(column + 1, row, use), across);
        double north = blended(height(column, row + 1, use), height(column + 1, row + 1, use), across);
        return blended(south, north, up);
    }

    private double height(double column, double row, int use) {
        return around((long) (column * 1_000_003 + row), use);
    }

    private static double eased(double share) {
        return share * share * (3 - 2 * share);
    }

    private static double blended(double from, double to, double share) {
        return from + share * (to - from);
    }
}
