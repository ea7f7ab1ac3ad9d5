package org.wadeplan.planner.method.space;

import java.util.Arrays;

/**
 * Sets of slice numbers as rising pairs of first and last, apart from one another: {@code 0,3,7,7} holds 0 to 3 and 7.
 * Arrays, because an audit makes millions of them.
 */
final class Runs {

    static final int[] NONE = {};

    private Runs() {}

    static int[] of(int first, int last) {
        return new int[] {first, last};
    }

    static boolean contains(int[] runs, int slice) {
        for (int i = 0; i < runs.length && runs[i] <= slice; i += 2) {
            if (slice <= runs[i + 1]) {
                return true;
            }
        }
        return false;
    }

    static boolean intersects(int[] a, int[] b) {
        int i = 0;
        int j = 0;
        while (i < a.length && j < b.length) {
            if (a[i + 1] < b[j]) {
                i += 2;
            } else if (b[j + 1] < a[i]) {
                j += 2;
            } else {
                return true;
            }
        }
        return false;
    }

    /** Whether every slice of the inner set is in the outer one. */
    static boolean covers(int[] outer, int[] inner) {
        int i = 0;
        for (int j = 0; j < inner.length; j += 2) {
            while (i < outer.length && outer[i + 1] < inner[j]) {
                i += 2;
            }
            if (i >= outer.length || outer[i] > inner[j] || outer[i + 1] < inner[j + 1]) {
                return false;
            }
        }
        return true;
    }

    static int[] intersect(int[] a, int[] b) {
        int[] both = new int[a.length + b.length];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < a.length && j < b.length) {
            int first = Math.max(a[i], b[j]);
            int last = Math.min(a[i + 1], b[j + 1]);
            if (first <= last) {
                both[size++] = first;
                both[size++] = last;
            }
            if (a[i + 1] < b[j + 1]) {
                i += 2;
            } else {
                j += 2;
            }
        }
        return size == both.length ? both : Arrays.copyOf(both, size);
    }

    static int[] union(int[] a, int[] b) {
        int[] all = new int[a.length + b.length];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < a.length || j < b.length) {
            boolean left = j >= b.length || (i < a.length && a[i] <= b[j]);
            int first = left ? a[i] : b[j];
            int last = left ? a[i + 1] : b[j + 1];
            i += left ? 2 : 0;
            j += left ? 0 : 2;
            if (size > 0 && first <= all[size - 1] + 1) {
                all[size - 1] = Math.max(all[size - 1], last);
            } else {
                all[size++] = first;
                all[size++] = last;
            }
        }
        return Arrays.copyOf(all, size);
    }

    /** What is in the first set and not in the second. */
    static int[] minus(int[] a, int[] b) {
        int[] left = new int[a.length + b.length + 2];
        int size = 0;
        int j = 0;
        for (int i = 0; i < a.length; i += 2) {
            int from = a[i];
            while (j < b.length && b[j + 1] < from) {
                j += 2;
            }
            for (int k = j; k < b.length && b[k] <= a[i + 1]; k += 2) {
                if (b[k] > from) {
                    left[size++] = from;
                    left[size++] = b[k] - 1;
                }
                from = Math.max(from, b[k + 1] + 1);
            }
            if (from <= a[i + 1]) {
                left[size++] = from;
                left[size++] = a[i + 1];
            }
        }
        return Arrays.copyOf(left, size);
    }

    static int size(int[] runs) {
        int size = 0;
        for (int i = 0; i < runs.length; i += 2) {
            size += runs[i + 1] - runs[i] + 1;
        }
        return size;
    }
}
