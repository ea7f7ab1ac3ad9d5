package org.wadeplan.planner.pack.map;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

class MapFrameTest {

    @Test
    void picksTheLargestRoundScaleThatFits() {
        Envelope across = new Envelope(1000, 1150, 500, 520);
        // 150 m at 1:1000 are 150 mm, which is all that 182 mm less two margins of 16 mm leave.
        assertThat(MapFrame.around(across, 182, 122, 16).scale()).isEqualTo(1000);
        assertThat(MapFrame.around(across, 181.9, 122, 16).scale()).isEqualTo(1250);
    }

    @Test
    void putsTheMiddleOfTheReachInTheMiddleOfThePaper() {
        MapFrame frame = MapFrame.around(new Envelope(1000, 1100, 500, 520), 182, 122, 16);
        assertThat(frame.paper(new Coordinate(1050, 510))).isEqualTo(new Coordinate(91, 61));
    }

    @Test
    void drawsNorthUpAndEastToTheRight() {
        MapFrame frame = new MapFrame(new Envelope(0, 182, 0, 122), 1000);
        assertThat(frame.paper(new Coordinate(10, 100))).isEqualTo(new Coordinate(10, 22));
    }
}
