package org.wadeplan.geo.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.io.GeoPackageLines;
import org.wadeplan.geo.lines.LineNodes;
import org.wadeplan.geo.lines.LineReading;
import org.wadeplan.geo.lines.LineReading.Reason;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.problem.SourcePlace;

class InventedFileTest {

    private static final int LINES = 12_000;

    @TempDir
    Path folder;

    private LineReading written(String name, long seed) throws Exception {
        Path file = folder.resolve(name);
        InventedFile.write(file, LINES, seed);
        return new GeoPackageLines(file, SourcePlace.file(name))
                .read(InventedFile.LAYER)
                .value()
                .orElseThrow();
    }

    private static double[] eastings(LineSet lines) {
        double[] eastM = new double[lines.vertexCount()];
        Arrays.setAll(eastM, lines::eastM);
        return eastM;
    }

    @Test
    void theSameSeedGivesTheSameNetworkAndAnotherSeedAnother() throws Exception {
        double[] once = eastings(written("a.gpkg", 7).lines());

        assertThat(eastings(written("b.gpkg", 7).lines())).isEqualTo(once);
        assertThat(eastings(written("c.gpkg", 8).lines())).isNotEqualTo(once);
    }

    @Test
    void linesMeetInTreesAndCarryTheFaultsOfRealFiles() throws Exception {
        LineReading reading = written("a.gpkg", 7);
        LineSet lines = reading.lines();
        LineNodes confluences = LineNodes.whereEndsMeet(lines, 3);
        Set<Reason> faults = new LinkedHashSet<>(reading.counts().keySet());

        assertThat(lines.lineCount()).isBetween(LINES * 3 / 4, LINES * 3 / 2);
        assertThat((double) lines.vertexCount() / lines.lineCount()).isBetween(10.0, 15.0);
        assertThat((double) confluences.nodeCount() / lines.lineCount()).isBetween(0.35, 0.5);
        assertThat(faults)
                .containsExactlyInAnyOrder(Reason.NO_SHAPE, Reason.EMPTY, Reason.NO_LENGTH, Reason.NOT_FINITE);
    }
}
