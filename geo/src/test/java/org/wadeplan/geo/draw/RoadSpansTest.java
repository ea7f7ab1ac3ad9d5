package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.access.Roads;
import org.wadeplan.geo.draw.AreaSpans.Span;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

class RoadSpansTest {

    private static LineSet line(double... eastNorth) {
        LineSetBuilder lines = new LineSetBuilder();
        lines.add("line", eastNorth, eastNorth.length / 2);
        return lines.build();
    }

    /** A road crosses at 1000 m, square to the stream: within 500 m of it lie 500 to 1500 m, good to half a step. */
    @Test
    void findsWhatLiesBeyondTheDistanceOnBothSidesOfARoad() {
        Roads road = new Roads(line(1000, -2000, 1000, 2000), List.of("track"));

        assertThat(RoadSpans.beyond(line(0, 0, 3000, 0), road, 500))
                .containsExactly(new Span(0, 0, 500), new Span(0, 1500, 3000));
        assertThat(RoadSpans.beyond(line(0, 0, 3000, 0), road, 5000)).isEmpty();
    }
}
