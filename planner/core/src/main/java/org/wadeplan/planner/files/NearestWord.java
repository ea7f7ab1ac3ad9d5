package org.wadeplan.planner.files;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds what was probably meant by a mistyped word.
 *
 * <p>The distance counts letters inserted, dropped, changed, or swapped with their neighbour (optimal string alignment),
 * whatever their case: {@code BNR} is one swap away from {@code BRN}.
 */
final class NearestWord {

    /** Of two letters with one changed, nothing is left to tell what was meant. */
    private static final int SHORTEST = 3;

    private NearestWord() {}

    /** The nearest of the candidates, the first of equals; empty where none is near: a third of its letters at most. */
    static Optional<String> of(String word, Collection<String> candidates) {
        int best = word.length() < SHORTEST ? 1 : word.length() / 3 + 1;
        Optional<String> nearest = Optional.empty();
        for (String candidate : candidates) {
            int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (distance < best) {
                best = distance;
                nearest = Optional.of(candidate);
            }
        }
        return nearest;
    }

    static int distance(String a, String b) {
        int[][] steps = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, steps, i, j);
            }
        }
        return steps[a.length()][b.length()];
    }

    private static int cheapest(String a, String b, int[][] steps, int i, int j) {
        int change = steps[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(change, Math.min(steps[i - 1][j], steps[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
    }
}
