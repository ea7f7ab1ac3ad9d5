package org.wadeplan.geo.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PackedBoxesTest {

    private static final int SIDE = 32;

    /** What makes a Hilbert curve (Hilbert 1891): it visits every cell once and never leaves one but for a neighbour. */
    @Test
    void theCurveGoesFromEachCellToANeighbour() {
        int[] cells = IntStream.range(0, SIDE * SIDE)
                .boxed()
                .sorted((a, b) -> Integer.compare(place(a), place(b)))
                .mapToInt(Integer::intValue)
                .toArray();

        for (int i = 1; i < cells.length; i++) {
            int across = Math.abs(cells[i] % SIDE - cells[i - 1] % SIDE);
            int up = Math.abs(cells[i] / SIDE - cells[i - 1] / SIDE);
            assertThat(across + up).isEqualTo(1);
        }
    }

    private static int place(int cell) {
        return PackedBoxes.hilbert(cell % SIDE, cell / SIDE);
    }

    @Test
    void sidesAreRoundedOutwards() {
        double side = 1_234_567.891;

        assertThat((double) PackedBoxes.down(side)).isLessThan(side).isGreaterThan(side - 0.2);
        assertThat((double) PackedBoxes.up(side)).isGreaterThan(side).isLessThan(side + 0.2);
        assertThat(PackedBoxes.down(0.5)).isEqualTo(0.5f).isEqualTo(PackedBoxes.up(0.5));
    }

    @Test
    void everyItemIsBelowTheRootOnce() {
        int count = 1000;
        float[] sides = new float[4 * count];
        for (int i = 0; i < count; i++) {
            sides[4 * i] = sides[4 * i + 2] = i % 37;
            sides[4 * i + 1] = sides[4 * i + 3] = i % 11;
        }
        PackedBoxes boxes = new PackedBoxes(sides);
        int[] seen = new int[count];
        count(boxes, boxes.root(), seen);

        assertThat(seen).containsOnly(1);
    }

    private static void count(PackedBoxes boxes, int box, int[] seen) {
        if (boxes.isItem(box)) {
            seen[boxes.item(box)]++;
            return;
        }
        for (int child = boxes.childrenStart(box); child < boxes.childrenEnd(box); child++) {
            count(boxes, child, seen);
        }
    }
}
