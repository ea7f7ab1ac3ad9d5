package org.wadeplan.geo.lines;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What files call their lines, kept small: millions of row numbers such as {@code 17} and {@code 17/2} are kept as
 * numbers, any other id as it is.
 */
final class LineIds {

    /** So many digits always fit into a number. */
    private static final int MOST_DIGITS = 18;

    private long[] number = new long[1024];
    private int[] part = new int[1024];
    private String @Nullable [] words;
    private int count;

    int count() {
        return count;
    }

    void add(String id) {
        if (count == number.length) {
            number = Arrays.copyOf(number, 2 * count);
            part = Arrays.copyOf(part, 2 * count);
            words = words == null ? null : Arrays.copyOf(words, 2 * count);
        }
        int slash = id.indexOf('/');
        boolean numbers = slash < 0
                ? isPlainNumber(id, 0, id.length())
                : isPlainNumber(id, 0, slash) && isPlainNumber(id, slash + 1, id.length()) && id.length() - slash < 10;
        if (numbers) {
            number[count] = Long.parseLong(id, 0, slash < 0 ? id.length() : slash, 10);
            part[count] = slash < 0 ? -1 : Integer.parseInt(id, slash + 1, id.length(), 10);
        } else {
            if (words == null) {
                words = new String[number.length];
            }
            words[count] = id;
        }
        count++;
    }

    String get(int line) {
        if (line < 0 || line >= count) {
            throw new IndexOutOfBoundsException("Line " + line + " of " + count);
        }
        if (words != null && words[line] != null) {
            return words[line];
        }
        return part[line] < 0 ? Long.toString(number[line]) : number[line] + "/" + part[line];
    }

    /** Whether writing the number out again gives the same digits. */
    private static boolean isPlainNumber(String id, int from, int to) {
        if (to <= from || to - from > MOST_DIGITS || (id.charAt(from) == '0' && to - from > 1)) {
            return false;
        }
        for (int i = from; i < to; i++) {
            if (id.charAt(i) < '0' || id.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }
}
