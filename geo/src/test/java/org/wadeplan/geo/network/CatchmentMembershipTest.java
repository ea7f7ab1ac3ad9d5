package org.wadeplan.geo.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class CatchmentMembershipTest {

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final Geometry WEST = SHAPES.toGeometry(new Envelope(0, 1000, 0, 1000));
    private static final Geometry EAST = SHAPES.toGeometry(new Envelope(1000, 3000, 0, 1000));
    private static final CatchmentMembership MEMBERSHIP = new CatchmentMembership(Map.of("WEST", WEST, "EAST", EAST));

    private static CatchmentMembership.Share share(String wkt) {
        return MEMBERSHIP.of(StreamNetworkTest.line(wkt));
    }

    @Test
    void aLineBelongsToTheOutlineThatHoldsMostOfIt() {
        assertThat(share("LINESTRING (700 500, 1700 500)"))
                .isEqualTo(new CatchmentMembership.Share(Optional.of("EAST"), 700, 1000));
        assertThat(share("LINESTRING (500 500, 1500 500)").code())
                .as("of equal shares the first by code")
                .contains("EAST");
        assertThat(share("LINESTRING (0 5000, 10 5000)").code()).isEmpty();
    }

    @Test
    void streamsElsewhereThanTheySayAndThoseThatLeaveTheirOutlineAreNamed() {
        StreamNetwork network = new StreamNetwork(List.of(
                new StreamLine("IN", Optional.empty(), "WEST", StreamNetworkTest.line("LINESTRING (0 9, 1050 9)")),
                new StreamLine("OUT", Optional.empty(), "WEST", StreamNetworkTest.line("LINESTRING (0 5, 1101 5)")),
                new StreamLine("ELSE", Optional.empty(), "WEST", StreamNetworkTest.line("LINESTRING (900 5, 1900 5)")),
                new StreamLine("NONE", Optional.empty(), "X", StreamNetworkTest.line("LINESTRING (0 7, 10 7)"))));

        assertThat(CatchmentCheck.of(network, Map.of("WEST", WEST, "EAST", EAST), SourcePlace.file("s.gpkg")))
                .extracting(Problem::sentence)
                .containsExactly(
                        "s.gpkg, ELSE, column catchment: the file says WEST, but 900 of its 1000 m lie in EAST. Allowed:"
                                + " the catchment that holds most of the line. Do: check the catchment and the outlines:"
                                + " permits and cleaning go by the catchment",
                        "s.gpkg, OUT, column catchment: 101 of its 1101 m lie outside the outline of WEST, from 1000, 5"
                                + " on. Do: nothing if the outline is coarse; if not, check both");
    }
}
