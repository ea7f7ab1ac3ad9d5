package org.wadeplan.geo.lines;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.lines.LineReading.LeftOut;
import org.wadeplan.geo.lines.LineReading.Reason;

/**
 * Walks through shapes in well-known binary and gathers their lines, without making a shape of any of them.
 *
 * <p>Each part of a multipart shape becomes a line of its own. Heights and measures are passed over. Source of the form:
 * OGC 06-103r4 (Simple Features), clause 8.2; dimensions are told by thousands, as in ISO 13249-3, or by the high bits
 * that older programs write. Not safe to share between threads.
 */
public final class WkbLines {

    private static final VarHandle LITTLE_DOUBLE =
            MethodHandles.byteArrayViewVarHandle(double[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle BIG_DOUBLE =
            MethodHandles.byteArrayViewVarHandle(double[].class, ByteOrder.BIG_ENDIAN);
    private static final VarHandle LITTLE_INT =
            MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle BIG_INT = MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.BIG_ENDIAN);

    private static final int LINE = 2;
    private static final int MULTI_LINE = 5;
    private static final int COLLECTION = 7;

    /** Collections inside collections deeper than this are damage, not data. */
    private static final int MOST_NESTED = 8;

    /** No metric system of the Earth counts so far; a vertex further out would make a reach search endless. */
    private static final double FURTHEST_M = 1e9;

    private final LineSetBuilder lines;
    private final List<LeftOut> leftOut = new ArrayList<>();
    private double[] eastNorth = new double[1024];

    private byte[] wkb = {};
    private int at;
    private int end;
    private boolean little;

    /** After a part that is no line, nobody knows where the next part begins. */
    private boolean lost;

    public WkbLines(LineSetBuilder lines) {
        this.lines = lines;
    }

    /**
     * Adds the lines of one shape. A feature's only line takes the feature's id, several take {@code id/1}, {@code id/2} …
     *
     * @param id what the file calls the feature
     * @param bytes the shape's bytes, from {@code start} to their end
     */
    public void add(String id, byte[] bytes, int start) {
        this.wkb = bytes;
        this.at = start;
        this.end = bytes.length;
        this.lost = false;
        if (!shape(id, 0)) {
            leaveOut(id, Reason.UNREADABLE);
        }
    }

    public void leaveOut(String id, Reason reason) {
        leftOut.add(new LeftOut(id, reason));
    }

    /** Everything so far; the builder must not be used afterwards. */
    public LineReading finished() {
        return new LineReading(lines.build(), leftOut);
    }

    /** @return whether the bytes could be understood to the shape's end */
    private boolean shape(String id, int depth) {
        if (end - at < 9 || depth > MOST_NESTED) {
            return false;
        }
        little = wkb[at] != 0;
        at++;
        int type = nextInt();
        // High bits: height, measure, and a system's number that then follows. Source: extended WKB, common practice.
        int highBits = type >>> 29;
        type &= 0x1fffffff;
        if ((highBits & 1) != 0) {
            at += 4;
        }
        int more = Math.max(thousands(type), Integer.bitCount(highBits & 0b110));
        return switch (type % 1000) {
            case LINE -> line(id, 2 + more);
            case MULTI_LINE, COLLECTION -> parts(id, depth);
            default -> {
                leaveOut(id, Reason.NOT_A_LINE);
                lost = true;
                yield true;
            }
        };
    }

    /** How many numbers beyond two each vertex has: 1000 a height, 2000 a measure, 3000 both. */
    private static int thousands(int type) {
        return switch (type / 1000) {
            case 1, 2 -> 1;
            case 3 -> 2;
            default -> 0;
        };
    }

    private boolean parts(String id, int depth) {
        if (end - at < 4) {
            return false;
        }
        int count = nextInt();
        if (count == 0) {
            leaveOut(id, Reason.EMPTY);
        }
        for (int part = 1; part <= count && !lost; part++) {
            if (!shape(count == 1 ? id : id + "/" + part, depth + 1)) {
                return false;
            }
        }
        return count >= 0;
    }

    private boolean line(String id, int dimensions) {
        if (end - at < 4) {
            return false;
        }
        int count = nextInt();
        int step = 8 * dimensions;
        if (count < 0 || (long) count * step > end - at) {
            return false;
        }
        if (count == 0) {
            leaveOut(id, Reason.EMPTY);
        } else if (!vertices(count, step)) {
            leaveOut(id, Reason.NOT_FINITE);
        } else if (!lines.add(id, eastNorth, count)) {
            leaveOut(id, Reason.NO_LENGTH);
        }
        return true;
    }

    /** @return whether every vertex is a place; reads to the line's end either way */
    private boolean vertices(int count, int step) {
        if (eastNorth.length < 2L * count) {
            eastNorth = new double[(int) Math.min(Integer.MAX_VALUE - 8, 3L * count)];
        }
        boolean places = true;
        for (int i = 0; i < count; i++) {
            // The handles must be named here: through a variable each number would cost ten times as much.
            double east = (double) (little ? LITTLE_DOUBLE.get(wkb, at) : BIG_DOUBLE.get(wkb, at));
            double north = (double) (little ? LITTLE_DOUBLE.get(wkb, at + 8) : BIG_DOUBLE.get(wkb, at + 8));
            places &= Math.abs(east) <= FURTHEST_M && Math.abs(north) <= FURTHEST_M;
            eastNorth[2 * i] = east;
            eastNorth[2 * i + 1] = north;
            at += step;
        }
        return places;
    }

    private int nextInt() {
        int value = (int) (little ? LITTLE_INT : BIG_INT).get(wkb, at);
        at += 4;
        return value;
    }
}
