package org.wadeplan.geo.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

class ReachLayerTest {

    private static final SourcePlace ROW = SourcePlace.line("sites.csv", 2).row("BRN-01");
    private static final CoordinateSystem UTM27 =
            CoordinateSystem.named("EPSG:32627", ROW).value().orElseThrow();
    private static final ReachRule RULE = new ReachRule(150, 10, "common practice");

    private static StreamLine stream(String code, String wkt) {
        try {
            return new StreamLine(code, Optional.empty(), code, (LineString) new WKTReader().read(wkt));
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    /** Runs north to south for 1000 m, with a tributary from the west at 500 m. */
    private static final ReachLayer LAYER = new ReachLayer(
            new StreamNetwork(List.of(
                    stream("BRN", "LINESTRING (500000 5101000, 500000 5100400, 500000 5100000)"),
                    stream("TRB", "LINESTRING (499900 5100500, 500000 5100500)"))),
            UTM27,
            RULE);

    private static Checked<Reach> lay(String stream, String shortCode, double east, double north) {
        return LAYER.lay(new SiteStart("BRN-01", stream, shortCode, new MetricPoint(east, north), Bank.LEFT), ROW);
    }

    @Test
    void startsDownstreamAndRunsUpstreamInFifteenMetreSteps() {
        Checked<Reach> answer = lay("BRN", "BR01", 500003, 5100300);
        Reach reach = answer.value().orElseThrow();

        assertThat(answer.problems()).isEmpty();
        assertThat(reach.stakes())
                .extracting(Stake::name)
                .containsExactly(
                        "BR01-000",
                        "BR01-015",
                        "BR01-030",
                        "BR01-045",
                        "BR01-060",
                        "BR01-075",
                        "BR01-090",
                        "BR01-105",
                        "BR01-120",
                        "BR01-135",
                        "BR01-150");
        assertThat(reach.start().at()).isEqualTo(new MetricPoint(500000, 5100300));
        assertThat(reach.start().chainageM()).isEqualTo(700, within(1e-9));
        assertThat(reach.start().fromMouthM()).isEqualTo(300, within(1e-9));
        assertThat(reach.end().at().northM()).isEqualTo(5100450, within(1e-6));
        assertThat(reach.siteOffsetM()).isEqualTo(3, within(1e-9));
        assertThat(reach.line().toText()).isEqualTo("LINESTRING (500000 5100300, 500000 5100400, 500000 5100450)");
        assertThat(reach.subReaches())
                .extracting(SubReach::letter)
                .startsWith('A')
                .endsWith('J');
    }

    @Test
    void aStartOffItsLineIsDoubtfulFromTwentyMetresAndRefusedFromAHundred() {
        assertThat(lay("BRN", "BR01", 500020, 5100300).problems()).isEmpty();
        assertThat(lay("BRN", "BR01", 500020.5, 5100300).problems())
                .extracting(problem -> problem.severity() + ": " + problem.found())
                .containsExactly(
                        "WARNING: the start lies 21 m from the stream line BRN; the nearest point of the line is used");
        assertThat(lay("BRN", "BR01", 500100, 5100300).value()).isPresent();
        Checked<Reach> far = lay("BRN", "BR01", 500100.5, 5100300);
        assertThat(far.value()).isEmpty();
        assertThat(far.problems())
                .extracting(Problem::found)
                .containsExactly("the start lies 101 m from the stream line BRN");
    }

    @Test
    void namesALineThatIsNearer() {
        assertThat(lay("BRN", "BR01", 499950, 5100510).problems().get(0).found())
                .isEqualTo("the start lies 50 m from the stream line BRN and 10 m from TRB;"
                        + " the nearest point of the line is used");
    }

    @Test
    void aReachThatWouldRunPastTheSourceIsRefusedWithTheMoveThatFits() {
        Checked<Reach> answer = lay("BRN", "BR01", 500000, 5101000 - 118);

        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems())
                .extracting(Problem::sentence)
                .containsExactly("sites.csv, line 2 (BRN-01): only 118 m of the line BRN lie between the start and the"
                        + " source, and a reach needs 150 m. Allowed: a start at least 150 m below the source."
                        + " Do: move the start 32 m downstream");
    }

    @Test
    void aStartExactlyOneReachBelowTheSourceFits() {
        assertThat(lay("BRN", "BR01", 500000, 5101000 - 150)
                        .value()
                        .orElseThrow()
                        .end()
                        .chainageM())
                .isEqualTo(0, within(1e-9));
        assertThat(lay("BRN", "BR01", 500000, 5101000 - 149.99).value()).isEmpty();
    }

    @Test
    void aLineShorterThanAReachFitsNone() {
        assertThat(lay("TRB", "TR01", 500000, 5100500).problems())
                .extracting(Problem::remedy)
                .containsExactly("choose another stream: this line is 100 m long in all");
    }

    @Test
    void aReachOverAConfluenceIsWarnedAbout() {
        assertThat(lay("BRN", "BR01", 500000, 5100400).problems())
                .extracting(Problem::found)
                .containsExactly("the reach runs over a confluence 100 m above its start, with TRB");
    }

    @Test
    void faultsOfOneSiteAreAllReported() {
        assertThat(lay("BRX", "BRANNET1", 500000, 5100400).problems())
                .extracting(Problem::code)
                .containsExactly("stake-name-unfit", "stream-unknown");
    }

    @Test
    void leftAndRightLookDownstream() {
        var measure = new StreamNetwork(List.of(stream("S", "LINESTRING (0 100, 0 0)"))).measure("S");

        // The stream runs south, so a crew looking downstream has the east on its left.
        assertThat(Bank.of(new MetricPoint(5, 50), measure)).isEqualTo(Bank.LEFT);
        assertThat(Bank.of(new MetricPoint(-5, 50), measure)).isEqualTo(Bank.RIGHT);
        assertThat(Bank.RIGHT.beside(measure, 50, 3)).isEqualTo(new MetricPoint(-3, 50));
    }
}
