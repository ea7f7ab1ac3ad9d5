package org.wadeplan.geo.draw;

/** Hoare's selection: puts the k-th smallest in its place, smaller ones before it and larger ones behind it. */
final class Median {

    private Median() {}

    /**
     * Rearranges numbers by what they stand for.
     *
     * @param order the numbers
     * @param value of each number
     * @param from first place to touch
     * @param to last place to touch
     * @param wanted the place to fill rightly
     */
    static void place(int[] order, double[] value, int from, int to, int wanted) {
        int low = from;
        int high = to;
        while (low < high) {
            double pivot = middleOfThree(value[order[low]], value[order[(low + high) >>> 1]], value[order[high]]);
            int left = low;
            int right = high;
            while (left <= right) {
                while (value[order[left]] < pivot) {
                    left++;
                }
                while (value[order[right]] > pivot) {
                    right--;
                }
                if (left <= right) {
                    int moved = order[left];
                    order[left++] = order[right];
                    order[right--] = moved;
                }
            }
            if (wanted <= right) {
                high = right;
            } else if (wanted >= left) {
                low = left;
            } else {
                return;
            }
        }
    }

    private static double middleOfThree(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
