package org.wadeplan.geo.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Against counts that PostGIS 3.3.2 gave on the same open data, which is no part of the project: skipped where absent.
 *
 * <p>Source: United States flowline data, New Hope River (CC0), in plane coordinates as stored.
 */
class CandidateSearchReferenceTest {

    private static final Path FILE = Path.of("..", "..", "shared", "data", "usgs_new_hope.gpkg");

    private static SearchGround newHope() {
        assumeTrue(
                Files.isRegularFile(FILE),
                "skipped: the open data file usgs_new_hope.gpkg is not beside the project, in ../shared/data");
        Map<String, LineString> lines = new LinkedHashMap<>();
        for (Feature feature : new GeoPackageReader(FILE, SourcePlace.file("usgs_new_hope.gpkg"))
                .read("nhdplus_flowline")
                .value()
                .orElseThrow()
                .features()) {
            lines.put(feature.text("comid").orElseThrow(), (LineString)
                    feature.geometry().orElseThrow().getGeometryN(0));
        }
        return SearchGround.of(Streams.graph(lines));
    }

    /** Whole reaches of 150 m end to end from the lower end of each flowline; those nearer than so far are dropped. */
    @ParameterizedTest
    @CsvSource({"0, 3496", "50, 3015", "100, 2940"})
    void newHopeKeepsTheReachesThatAnotherProgramKeeps(double clearM, int kept) {
        CandidateSearch search = Rules.USUAL
                .clearing(clearM, ClearBy.STRAIGHT)
                .laid(new SearchRules.EndToEnd(), false)
                .search(newHope());
        SearchResult result = search.result();

        assertThat(result.counts().get(0).wholeReaches()).isEqualTo(3496);
        assertThat(result.counts().get(0).clearReaches()).isEqualTo(kept);
        assertThat(result.candidates()).hasSize(kept);
        assertThat(result.tally().totalM()).isEqualTo(577_379, within(1.0));
    }
}
