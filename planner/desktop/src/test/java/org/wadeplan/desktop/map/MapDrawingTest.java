package org.wadeplan.desktop.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** What the map reckons before it draws. */
class MapDrawingTest {

    private static final ViewBox VIEW = new ViewBox(1000, 2000, 2, 400, 300);

    private static StreamShape stream(double... eastNorth) {
        Coordinate[] line = new Coordinate[eastNorth.length / 2];
        for (int i = 0; i < line.length; i++) {
            line[i] = new Coordinate(eastNorth[2 * i], eastNorth[2 * i + 1]);
        }
        return StreamShape.of("S", "S", new GeometryFactory().createLineString(line));
    }

    @Test
    void northIsUpAndThereAndBackIsTheSamePlace() {
        assertThat(VIEW.y(2010)).isLessThan(VIEW.y(2000));
        assertThat(VIEW.east(VIEW.x(1234.5))).isCloseTo(1234.5, within(1e-9));
        assertThat(VIEW.north(VIEW.y(1987.25))).isCloseTo(1987.25, within(1e-9));
    }

    @Test
    void zoomingKeepsThePlaceUnderTheCursor() {
        ViewBox zoomed = VIEW.zoomedAt(37, 211, 1.25);
        assertThat(zoomed.east(37)).isCloseTo(VIEW.east(37), within(1e-9));
        assertThat(zoomed.north(211)).isCloseTo(VIEW.north(211), within(1e-9));
        assertThat(zoomed.metresPerPx()).isCloseTo(1.6, within(1e-12));
    }

    @Test
    void zoomingStopsAtItsEnds() {
        ViewBox near = VIEW;
        ViewBox far = VIEW;
        for (int i = 0; i < 200; i++) {
            near = near.zoomedAt(0, 0, 2);
            far = far.zoomedAt(0, 0, 0.5);
        }
        assertThat(near.metresPerPx()).isEqualTo(ViewBox.CLOSEST);
        assertThat(far.metresPerPx()).isEqualTo(ViewBox.WIDEST);
    }

    @Test
    void draggingMovesTheGroundWithTheHand() {
        ViewBox panned = VIEW.panned(10, 5);
        assertThat(panned.x(1000)).isCloseTo(VIEW.x(1000) + 10, within(1e-9));
        assertThat(panned.y(2000)).isCloseTo(VIEW.y(2000) + 5, within(1e-9));
    }

    @Test
    void fittingShowsTheWholeArea() {
        Envelope area = new Envelope(0, 10_000, 0, 3_000);
        assertThat(ViewBox.fitting(area, 500, 400).ground().contains(area)).isTrue();
        assertThat(ViewBox.fitting(new Envelope(5, 5, 5, 5), 500, 400).metresPerPx())
                .isEqualTo(ViewBox.CLOSEST);
    }

    @ParameterizedTest
    @CsvSource({"1, 100 m", "0.1, 10 m", "0.04, 5 m", "2.2, 200 m", "60, 5 km", "1000, 100 km"})
    void scaleBarsHaveRoundLengthsThatFit(double metresPerPx, String words) {
        ScaleBar bar = ScaleBar.within(150, metresPerPx);
        assertThat(bar.words()).isEqualTo(words);
        assertThat(bar.lengthPx()).isBetween(58.0, 150.0);
    }

    @Test
    void arrowsPointFromSourceToMouth() {
        // Flows east: source at 800, mouth at 1200.
        List<FlowArrows.Arrow> arrows = FlowArrows.along(stream(800, 2000, 1200, 2000), VIEW);
        assertThat(arrows).hasSize(1);
        assertThat(arrows.get(0).angleRad()).isCloseTo(0, within(1e-9));
        assertThat(arrows.get(0).x()).isCloseTo(200, within(1e-9));
        // Flows south, so down the screen.
        List<FlowArrows.Arrow> south = FlowArrows.along(stream(1000, 2200, 1000, 1800), VIEW);
        assertThat(south.get(0).angleRad()).isCloseTo(Math.PI / 2, within(1e-9));
    }

    @Test
    void aStreamTooShortToSeeHasNoArrow() {
        assertThat(FlowArrows.along(stream(1000, 2000, 1040, 2000), VIEW)).isEmpty();
    }

    @Test
    void labelsNeverOverlapAndTheFirstWins() {
        LabelPlacer placer = new LabelPlacer(300, 200);
        List<LabelPlacer.Box> placed = new java.util.ArrayList<>();
        for (int i = 0; i < 12; i++) {
            placer.place(150, 100, 60, 16, 9).ifPresent(placed::add);
        }
        // Right, left, above and below; the corners would touch these.
        assertThat(placed).hasSize(4);
        assertThat(placed.get(0)).isEqualTo(new LabelPlacer.Box(159, 92, 60, 16));
        for (int i = 0; i < placed.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(placed.get(i).overlaps(placed.get(j))).isFalse();
            }
        }
    }

    @Test
    void labelsStayInsideAndOffWhatIsKeptFree() {
        LabelPlacer placer = new LabelPlacer(100, 100);
        placer.keepFree(new LabelPlacer.Box(0, 0, 100, 45));
        assertThat(placer.place(95, 50, 60, 16, 9)).isPresent().get().satisfies(box -> {
            assertThat(box.x() + box.width()).isLessThanOrEqualTo(100);
            assertThat(box.y()).isGreaterThanOrEqualTo(45);
        });
        assertThat(placer.place(50, 10, 200, 16, 9)).isEmpty();
    }

    @Test
    void theRasterDrawsLevelSteepAndSlopingLines() {
        StreamRaster raster = new StreamRaster(400, 300);
        raster.draw(List.of(stream(800, 2000, 1200, 2000)), VIEW, 1, 2);
        int level = raster.covered();
        raster.draw(List.of(stream(1000, 2200, 1000, 1800)), VIEW, 1, 2);
        int steep = raster.covered();
        raster.draw(List.of(stream(600, 1700, 1400, 2300)), VIEW, 1, 2);
        int slope = raster.covered();
        assertThat(level).isBetween(400, 900);
        assertThat(steep).isBetween(400, 900);
        assertThat(slope).isGreaterThan(400);
    }

    @Test
    void theRasterPassesOverWhatIsOutOfSight() {
        StreamRaster raster = new StreamRaster(400, 300);
        raster.draw(List.of(stream(9000, 9000, 9500, 9000)), VIEW, 1, 2);
        assertThat(raster.covered()).isZero();
    }
}
