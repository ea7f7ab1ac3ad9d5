package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The planted files of the troubled demo round; what each message must hold stands in the README beside them. */
class PlantedFilesTest {

    @TempDir
    Path temp;

    private List<String> planted(String bad, String over) {
        return planted(BrokenRound.in(temp), bad, over);
    }

    private static List<String> planted(BrokenRound round, String bad, String over) {
        try {
            Files.copy(
                    DemoRound.folder("ilvermoor-troubled").resolve("bad").resolve(bad),
                    round.file(over),
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return round.sentences();
    }

    @Test
    void sites() {
        assertThat(planted("sites.csv", "sites.csv"))
                .containsExactly(
                        "ERROR decimal-comma sites.csv, line 3 (BRN-02), column max_depth_m: \"0,74\" has a comma; use a point: 0.74. Allowed: a number from 0 to 6 m",
                        "ERROR unknown-code sites.csv, line 4 (BRN-03), column stream: \"BNR\" is not known; nearest is BRN. Allowed: a code of the stream lines: BRN, HSK, OUN, PEL, TOL. Do: write BRN if that is meant",
                        "ERROR duplicate sites.csv, line 6 (HSK-01), column site: \"HSK-01\" stands on line 5 already: name Hesk Alders there and Hesk Alders again here; short_code HS01 there and HS1B here. Allowed: each once. Do: find out which row is right and delete or rename the other",
                        "ERROR blank sites.csv, line 11 (OUN-01), column east_m: the cell is blank. Allowed: a value: this column is required. Do: fill it in");
    }

    @Test
    void consents() {
        assertThat(planted("consents.csv", "consents.csv"))
                .containsExactly(
                        "ERROR gate-far consents.csv, line 2 (C-BRN-01), column gate_lon_deg: point is about 10 000 km from the project area; swapping the columns puts it 240 m from BRN-01. Allowed: a gate at most 5.0 km from its site. Do: swap gate_lon_deg and gate_lat_deg",
                        "ERROR gate-far consents.csv, line 6 (C-HSK-02), column gate_lon_deg: point is about 10 000 km from the project area; swapping the columns puts it 400 m from HSK-02. Allowed: a gate at most 5.0 km from its site. Do: swap gate_lon_deg and gate_lat_deg");
    }

    @Test
    void store() {
        assertThat(planted("store.csv", "store.csv"))
                .containsExactly(
                        "ERROR duplicate store.csv, line 3 (E1), column item: \"E1\" stands on line 2 already: state_note serviced 2027-09-03 there and second line for the same unit here; available_until blank there and 2027-09-07T23:59:00Z here. Allowed: each once. Do: find out which row is right and delete or rename the other");
    }

    @Test
    void certificates() {
        assertThat(planted("certificates.csv", "certificates.csv"))
                .containsExactly(
                        "ERROR certificate-twice certificates.csv, line 3 (E1 service): E1 has two certificates \"service\" for the same time: until 2028-09-02 (line 2) and until 2027-09-07 here. Allowed: one at a time, with valid_from where one follows another. Do: find out which is right and delete the other",
                        "ERROR date-ambiguous certificates.csv, line 17 (V2 inspection), column valid_until: \"07/09/2027\" can be 7 September 2027 or 9 July 2027. Allowed: a date as year-month-day, such as 2027-09-07. Do: write 2027-09-07 or 2027-07-09, whichever is meant");
    }

    @Test
    void methodTable() {
        assertThat(planted("method.dmn", "method.dmn"))
                .containsExactly(
                        "ERROR input-unknown method.dmn, column flow: the input \"flow\" is no condition of a site. Allowed: wet_state, depth_velocity_m2s, max_depth_m, conductivity_us_cm, clarity_m, water_temp_c, night_access. Do: rename the input in the table",
                        "ERROR cell-interval-empty method.dmn, line 242 (rule 5), column conductivity_us_cm: \"[600..15]\", at character 1: [600..15] ends before it starts. Allowed: the smaller number first, such as [15..600]. Do: correct the cell in method.dmn",
                        "NOTE hit-policy-missing method.dmn, line 48: no hit policy, so UNIQUE holds by the DMN standard: at most one rule may match. Allowed: a hit policy that is written down. Do: write hitPolicy=\"UNIQUE\" if that is meant");
    }

    @Test
    void streams() {
        assertThat(planted("streams.gpkg", "streams.gpkg"))
                .containsExactly(
                        "ERROR stream-gap streams.gpkg, feature 3 (HSK): HSK is in two pieces with a gap of 12.0 m near 527338, 5109444; the repair assumes a slip of drawing: the two are joined by a straight line. Allowed: a line as the water runs, in one piece, source to mouth. Do: look at it on the map; accept the repair with --accept join-gap:HSK (the file stays as it is), or correct the file",
                        "ERROR stream-spike streams.gpkg, feature 4 (TOL): the line runs out to 516309, 5099061 (vertex 1304) and straight back, which adds 346 m; the repair assumes a slip of drawing: that vertex is left out. Allowed: a line as the water runs, in one piece, source to mouth. Do: look at it on the map; accept the repair with --accept drop-spike:TOL (the file stays as it is), or correct the file",
                        "ERROR stream-reversed streams.gpkg, feature 5 (OUN): the line seems to run from mouth to source: its first vertex is 0 m and its last 15030 m from the known mouth (if it is right as drawn, say --accept as-drawn:OUN); the repair assumes a slip of drawing: it is turned round. Allowed: a line as the water runs, in one piece, source to mouth. Do: look at it on the map; accept the repair with --accept reverse:OUN (the file stays as it is), or correct the file",
                        "WARNING stream-name-missing streams.gpkg, feature 6 (PEL), column name: the name is blank; assumed to be Pell, by its code PEL. Allowed: what people call the stream. Do: nothing if that is right; if not, write the name into the file");
    }

    @Test
    void truncatedMap() {
        assertThat(planted("truncated.gpkg", "streams.gpkg"))
                .containsExactly(
                        "ERROR file-truncated streams.gpkg: the file breaks off: it has 20000 bytes and should have 151552. Allowed: a whole GeoPackage. Do: copy it again from where it came from");
    }

    @Test
    void emptyMap() {
        assertThat(planted("empty.gpkg", "streams.gpkg"))
                .containsExactly(
                        "ERROR file-empty streams.gpkg: the file is empty, 0 bytes. Allowed: a file with content. Do: copy it again; the copy probably failed");
    }

    @Test
    void metresDeclaredAsDegrees() {
        BrokenRound round = BrokenRound.in(temp)
                .with("round.json", "\"streams\": \"streams.gpkg\"", "\"streams\": \"rivers.geojson\"");
        assertThat(planted(round, "streams_wrongcrs.geojson", "rivers.geojson"))
                .containsExactly(
                        "ERROR coordinates-not-degrees rivers.geojson, feature YRD: coordinates 512400, 5096300 are outside -180…180/-90…90: file is probably EPSG:32627; so are those of 5 more features. Allowed: longitude and latitude in decimal degrees on WGS 84, as RFC 7946 has it. Do: export it again as GeoJSON in WGS 84 (EPSG:4326), or as a GeoPackage, which may be in metres");
    }
}
