package org.wadeplan.geo.lines;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random lines for properties. */
final class LineArbitraries {

    private LineArbitraries() {}

    /** Up to 30 lines of 2 to 40 vertices that wander about; half of the sets lie on whole metres, where many tie. */
    static Arbitrary<LineSet> sets() {
        return Combinators.combine(lines(), Arbitraries.of(true, false)).as((lines, whole) -> {
            LineSetBuilder set = new LineSetBuilder();
            for (double[] line : lines) {
                double[] vertices = line.clone();
                for (int i = 0; whole && i < vertices.length; i++) {
                    vertices[i] = Math.rint(vertices[i]);
                }
                set.add("L" + set.lineCount(), vertices, vertices.length / 2);
            }
            return set.build();
        });
    }

    static LineSet reversed(LineSet lines) {
        LineSetBuilder set = new LineSetBuilder();
        for (int line = 0; line < lines.lineCount(); line++) {
            int count = lines.endVertex(line) - lines.firstVertex(line);
            double[] vertices = new double[2 * count];
            for (int i = 0; i < count; i++) {
                vertices[2 * i] = lines.eastM(lines.endVertex(line) - 1 - i);
                vertices[2 * i + 1] = lines.northM(lines.endVertex(line) - 1 - i);
            }
            set.add(lines.id(line), vertices, count);
        }
        return set.build();
    }

    static void addMoved(LineSet lines, double eastM, double northM, LineSetBuilder to) {
        for (int line = 0; line < lines.lineCount(); line++) {
            int first = lines.firstVertex(line);
            double[] vertices = new double[2 * (lines.endVertex(line) - first)];
            for (int i = 0; i < vertices.length / 2; i++) {
                vertices[2 * i] = lines.eastM(first + i) + eastM;
                vertices[2 * i + 1] = lines.northM(first + i) + northM;
            }
            to.add(lines.id(line), vertices, vertices.length / 2);
        }
    }

    private static Arbitrary<List<double[]>> lines() {
        Arbitrary<Double> start = Arbitraries.doubles().between(-200, 200);
        Arbitrary<List<Double>> steps =
                Arbitraries.doubles().between(-60, 60).list().ofMinSize(2).ofMaxSize(78);
        return Combinators.combine(start, start, steps)
                .as(LineArbitraries::walk)
                .list()
                .ofMinSize(1)
                .ofMaxSize(30);
    }

    private static double[] walk(double eastM, double northM, List<Double> steps) {
        double[] vertices = new double[2 + steps.size() / 2 * 2];
        vertices[0] = eastM;
        vertices[1] = northM;
        for (int i = 2; i < vertices.length; i++) {
            vertices[i] = vertices[i - 2] + steps.get(i - 2);
        }
        return vertices;
    }
}
