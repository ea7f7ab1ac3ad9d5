package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.draw.AreaSpans.Span;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

class AreaSpansTest {

    private static AreaSpans lines() {
        LineSetBuilder lines = new LineSetBuilder();
        lines.add("straight", new double[] {0, 0, 1000, 0}, 2);
        lines.add("bent", new double[] {0, 10, 100, 10, 100, 110}, 3);
        LineSet set = lines.build();
        return new AreaSpans(set);
    }

    private static Geometry land(String wkt) throws ParseException {
        return new WKTReader().read(wkt);
    }

    @Test
    void findsEveryStretchOnTheLandWithItsHolesAndParts() throws ParseException {
        assertThat(lines().of(land("MULTIPOLYGON(((50 -5, 400 -5, 400 5, 50 5, 50 -5), (100 -2, 200 -2, 200 2, 100 2,"
                        + " 100 -2)), ((900 -5, 2000 -5, 2000 5, 900 5, 900 -5)))")))
                .containsExactly(new Span(0, 50, 100), new Span(0, 200, 400), new Span(0, 900, 1000));
    }

    @Test
    void followsALineRoundItsBends() throws ParseException {
        assertThat(lines().of(land("POLYGON((80 5, 120 5, 120 60, 80 60, 80 5))")))
                .containsExactly(new Span(1, 80, 150));
    }

    @Test
    void aLineAlongTheOutlineCountsAsOnTheLandAndOneTouchedAtAPointDoesNot() throws ParseException {
        assertThat(lines().of(land("POLYGON((100 0, 300 0, 300 -50, 100 -50, 100 0))")))
                .containsExactly(new Span(0, 100, 300));
        assertThat(lines().of(land("POLYGON((500 0, 520 -50, 480 -50, 500 0))")))
                .isEmpty();
    }

    @Test
    void landOffEveryLineHoldsNone() throws ParseException {
        assertThat(lines().of(land("POLYGON((0 500, 10 500, 10 510, 0 500))"))).isEmpty();
    }
}
