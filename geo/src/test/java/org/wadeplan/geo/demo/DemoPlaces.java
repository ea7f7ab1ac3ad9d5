package org.wadeplan.geo.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/** The invented places of the demo scenario, section 4: control vertices from source to mouth, and sites. */
final class DemoPlaces {

    private DemoPlaces() {}

    /** One stream: its control vertices, and which of them are sites. */
    record ControlLine(String code, String name, List<Coordinate> vertices) {}

    private static final String[] STREAMS = {
        "BRN|Brannet|499900,5115200 500420,5114050 500740,5112960 501460,5112120 502100,5111300 502760,5110310"
                + " 503150,5109420 503060,5108500 502800,5107800 502280,5106950 501880,5106210 501420,5105160"
                + " 501200,5104100",
        "HSK|Hesk|524100,5118400 523800,5117150 523210,5116040 522460,5115100 521900,5114060 521630,5112880"
                + " 522300,5111700 523900,5110800 526100,5109900 528300,5109200 531600,5108700",
        "TOL|Tollow|530300,5106900 529150,5105600 528110,5104260 527150,5103040 526480,5101730 525450,5100550"
                + " 524620,5099500 523950,5098640 521900,5098400 519600,5098900 516700,5098950 513800,5098300"
                + " 509400,5097500 505200,5097600 498300,5097100",
        "OUN|Ounder|505100,5091900 506050,5090200 506920,5088310 507330,5087400 507720,5086480 508010,5085800"
                + " 508260,5085170 509200,5083900 510050,5082900 510740,5081980 511600,5080400 512100,5078600",
        "PEL|Pell|527300,5090200 525900,5088500 524070,5086550 523150,5085350 522380,5084260 521700,5083100"
                + " 521000,5081900",
    };

    /** Site code, stream and place. */
    static final String SITES = """
            BRN-01 BRN 503150,5109420
            BRN-02 BRN 501880,5106210
            BRN-03 BRN 500740,5112960
            HSK-01 HSK 521630,5112880
            HSK-02 HSK 523210,5116040
            TOL-01 TOL 526480,5101730
            TOL-02 TOL 528110,5104260
            TOL-03 TOL 523950,5098640
            OUN-01 OUN 506920,5088310
            OUN-02 OUN 508260,5085170
            OUN-02B OUN 507720,5086480
            OUN-03 OUN 510740,5081980
            PEL-01 PEL 522380,5084260
            PEL-02 PEL 524070,5086550
            """;

    private static final String[] CATCHMENTS = {
        "BRN|Brannet|497500,5117500 506500,5117500 508500,5112000 508000,5105000 504500,5102500 499000,5102800"
                + " 496800,5108000",
        "HSK|Hesk|519000,5120500 527500,5120000 534000,5112500 534000,5107700 527500,5108100 523500,5109700"
                + " 519500,5110800 517500,5115000",
        "TOL|Tollow|534000,5107700 527500,5108100 523500,5109700 519500,5107500 512000,5103500 508000,5101500"
                + " 504500,5102500 499000,5102800 495500,5099500 496500,5095000 505000,5094800 514000,5095500"
                + " 522000,5095800 528000,5098500 533500,5103000",
        "OUN|Ounder|502500,5094000 509500,5093500 512500,5088000 515500,5081500 514000,5077000 509500,5077000"
                + " 505500,5082500 502000,5088500",
        "PEL|Pell|519000,5092500 530000,5092500 531000,5087000 525500,5083500 523000,5080000 518500,5080500"
                + " 518500,5086000",
    };

    static List<ControlLine> streams() {
        return read(STREAMS);
    }

    /** Outlines, not closed. */
    static List<ControlLine> catchments() {
        return read(CATCHMENTS);
    }

    /** By site code, in the scenario's order. */
    static Map<String, Coordinate> sites() {
        Map<String, Coordinate> sites = new LinkedHashMap<>();
        SITES.lines().forEach(line -> sites.put(line.split(" ", -1)[0], coordinate(line.split(" ", -1)[2])));
        return sites;
    }

    static String streamOf(String site) {
        return site.substring(0, 3);
    }

    private static List<ControlLine> read(String[] rows) {
        List<ControlLine> lines = new ArrayList<>();
        for (String row : rows) {
            String[] parts = row.split("\\|", -1);
            List<Coordinate> vertices = new ArrayList<>();
            for (String vertex : parts[2].split(" ", -1)) {
                vertices.add(coordinate(vertex));
            }
            lines.add(new ControlLine(parts[0], parts[1], List.copyOf(vertices)));
        }
        return List.copyOf(lines);
    }

    private static Coordinate coordinate(String text) {
        String[] parts = text.split(",", -1);
        return new Coordinate(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
    }
}
