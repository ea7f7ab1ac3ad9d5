package org.wadeplan.planner.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.GeoPackageReader;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.SearchSettings;

class CandidateFilesTest {

    private static final Round ROUND = DemoRound.resolved();
    private static final Instant MADE_AT = Instant.parse("2027-09-05T18:00:00Z");
    private static final CandidateReport REPORT = RoundSearch.search(
            ROUND,
            new SearchRequest(SearchSettings.USUAL.proposing(3), Optional.of("OUN"), Optional.empty(), true),
            SearchWatch.NONE);

    @TempDir
    Path temp;

    private List<Feature> layer(String name) {
        Path file = temp.resolve(CandidateFiles.GEOPACKAGE);
        return new GeoPackageReader(file, SourcePlace.file("candidates.gpkg"))
                .read(name)
                .value()
                .orElseThrow()
                .features();
    }

    @Test
    void theGeoPackageHoldsCandidatesStakesAndEveryRejectedStretchWithItsReasons() throws DiskException {
        assertThat(new CandidateFiles(ROUND, REPORT, MADE_AT).writeAll(temp)).isEmpty();

        assertThat(layer("candidates"))
                .extracting(each -> each.text("candidate").orElseThrow())
                .containsExactly("C01", "C02", "C03");
        assertThat(layer("stakes")).hasSize(33);
        assertThat(layer("rejected")).hasSameSizeAs(REPORT.rejected());
        assertThat(layer("rejected"))
                .extracting(each -> each.text("reasons").orElseThrow())
                .anyMatch(words -> words.contains("on the parcel L-OUN-02, consent refused"));
    }

    @Test
    void theHandheldGetsShortNamesAndTheMapOneLineForEachCandidate() throws DiskException, IOException {
        new CandidateFiles(ROUND, REPORT, MADE_AT).writeAll(temp);

        assertThat(Files.readString(temp.resolve(CandidateFiles.GPX)))
                .contains("<name>C01-000</name>", "<name>C03-150</name>", "<name>C02</name>");
        assertThat(Files.readString(temp.resolve(CandidateFiles.GEOJSON)))
                .contains("\"candidate\" : \"C03\"", "\"type\" : \"LineString\"");
    }

    @Test
    void theSameReportGivesTheSameBytes() throws DiskException, IOException {
        Path one = Files.createDirectory(temp.resolve("one"));
        Path two = Files.createDirectory(temp.resolve("two"));
        new CandidateFiles(ROUND, REPORT, MADE_AT).writeAll(one);
        new CandidateFiles(ROUND, REPORT, MADE_AT).writeAll(two);

        for (String file : List.of(CandidateFiles.GEOPACKAGE, CandidateFiles.GEOJSON, CandidateFiles.GPX)) {
            assertThat(two.resolve(file)).hasSameBinaryContentAs(one.resolve(file));
        }
    }

    @Test
    void aFolderThatIsNotThereIsSaidAndNothingIsWritten() {
        assertThatThrownBy(() -> new CandidateFiles(ROUND, REPORT, MADE_AT).writeAll(temp.resolve("absent")))
                .isInstanceOf(DiskException.class);
    }
}
