package org.wadeplan.geo.draw;

import java.nio.charset.StandardCharsets;

/**
 * Random numbers that are the same on every machine and in every version of Java.
 *
 * <p>Source: SplitMix64, Steele, Lea & Flood 2014, Fast splittable pseudorandom number generators, OOPSLA, with the
 * mixing constants known as variant 13. Written out here because the language promises no algorithm for its own classes,
 * and a draw must be repeatable in twenty years. Not safe to share between threads.
 */
final class SplitMix64 {

    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;

    private long state;

    SplitMix64(long seed) {
        this.state = seed;
    }

    /** A generator of its own for one named part of a draw, so that no part depends on how many numbers another took. */
    static SplitMix64 forPart(long seed, String part) {
        long mixed = seed;
        for (byte letter : part.getBytes(StandardCharsets.UTF_8)) {
            mixed = mix(mixed + GOLDEN_GAMMA ^ letter);
        }
        return new SplitMix64(mixed);
    }

    long nextLong() {
        state += GOLDEN_GAMMA;
        return mix(state);
    }

    /**
     * A whole number from 0 to less than the bound, each equally likely: what would favour some is drawn again.
     *
     * @param bound above 0
     */
    long below(long bound) {
        long bits = nextLong() >>> 1;
        long rest = bits % bound;
        while (bits - rest + (bound - 1) < 0) {
            bits = nextLong() >>> 1;
            rest = bits % bound;
        }
        return rest;
    }

    private static long mix(long seed) {
        long mixed = (seed ^ (seed >>> 30)) * 0xbf58476d1ce4e5b9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
        return mixed ^ (mixed >>> 31);
    }
}
