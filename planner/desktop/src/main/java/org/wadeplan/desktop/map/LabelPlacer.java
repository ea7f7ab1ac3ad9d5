package org.wadeplan.desktop.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for labels beside their points. Earlier labels win; one that fits nowhere is left out. */
final class LabelPlacer {

    private final double widthPx;
    private final double heightPx;
    private final List<Box> taken = new ArrayList<>();

    LabelPlacer(double widthPx, double heightPx) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    /** A rectangle on the screen, from its upper left corner. */
    record Box(double x, double y, double width, double height) {

        boolean overlaps(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }
    }

    /** Nothing may be written there. */
    void keepFree(Box box) {
        taken.add(box);
    }

    /**
     * Room for a label of that size beside a point: right, left, above, below, then the corners.
     *
     * @param gapPx between the point and the label
     */
    Optional<Box> place(double x, double y, double width, double height, double gapPx) {
        double right = x + gapPx;
        double left = x - gapPx - width;
        double above = y - gapPx - height;
        double below = y + gapPx;
        List<Box> tries = List.of(
                new Box(right, y - height / 2, width, height),
                new Box(left, y - height / 2, width, height),
                new Box(x - width / 2, above, width, height),
                new Box(x - width / 2, below, width, height),
                new Box(right, above, width, height),
                new Box(right, below, width, height),
                new Box(left, above, width, height),
                new Box(left, below, width, height));
        Optional<Box> free =
                tries.stream().filter(this::inside).filter(this::free).findFirst();
        free.ifPresent(taken::add);
        return free;
    }

    private boolean inside(Box box) {
        return box.x >= 0 && box.y >= 0 && box.x + box.width <= widthPx && box.y + box.height <= heightPx;
    }

    private boolean free(Box box) {
        return taken.stream().noneMatch(box::overlaps);
    }
}
