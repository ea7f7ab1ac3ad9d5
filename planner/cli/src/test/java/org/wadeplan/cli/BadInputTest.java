package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bad input from end to end: exit code 3, words that help, no half result, nothing written. The planted files and what
 * their messages must hold are those of demo-sites/ilvermoor-troubled/bad/README.md.
 */
class BadInputTest {

    @TempDir
    Path temp;

    /** One way to spoil a round, and what the answer must say. */
    record Fault(String name, UnaryOperator<TempRound> spoil, List<String> mustSay) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Fault> faults() {
        return Stream.concat(mapFaults(), tableFaults());
    }

    private static Stream<Fault> mapFaults() {
        return Stream.of(
                fault(
                        "metres declared as degrees",
                        round -> round.planted("streams_wrongcrs.geojson", "streams_wrongcrs.geojson")
                                .with("round.json", "\"streams.gpkg\"", "\"streams_wrongcrs.geojson\""),
                        "coordinates 512400, 5096300 are outside",
                        "file is probably EPSG:32627"),
                fault(
                        "reversed line",
                        round -> round.planted("streams.gpkg", "streams.gpkg"),
                        "feature 5 (OUN)",
                        "seems to run from mouth to source",
                        "--accept reverse:OUN"),
                fault(
                        "gap",
                        round -> round.planted("streams.gpkg", "streams.gpkg"),
                        "feature 3 (HSK)",
                        "gap of 12.0 m",
                        "--accept join-gap:HSK"),
                fault(
                        "spike",
                        round -> round.planted("streams.gpkg", "streams.gpkg"),
                        "feature 4 (TOL)",
                        "straight back",
                        "--accept drop-spike:TOL"),
                fault(
                        "null name",
                        round -> round.planted("streams.gpkg", "streams.gpkg"),
                        "feature 6 (PEL), column name",
                        "the name is blank; assumed to be Pell"),
                fault(
                        "truncated GeoPackage",
                        round -> round.planted("truncated.gpkg", "streams.gpkg"),
                        "streams.gpkg: the file breaks off",
                        "copy it again"),
                fault(
                        "empty GeoPackage",
                        round -> round.planted("empty.gpkg", "streams.gpkg"),
                        "streams.gpkg: the file is empty, 0 bytes"),
                fault("missing GeoPackage", round -> round.without("streams.gpkg"), "streams.gpkg"));
    }

    private static Stream<Fault> tableFaults() {
        return Stream.of(
                fault(
                        "comma decimals",
                        round -> round.planted("sites.csv", "sites.csv"),
                        "sites.csv, line 3 (BRN-02), column max_depth_m",
                        "\"0,74\" has a comma; use a point: 0.74"),
                fault(
                        "duplicate code",
                        round -> round.planted("sites.csv", "sites.csv"),
                        "sites.csv, line 6 (HSK-01)",
                        "\"HSK-01\" stands on line 5 already"),
                fault(
                        "unknown code",
                        round -> round.planted("sites.csv", "sites.csv"),
                        "\"BNR\" is not known; nearest is BRN",
                        "BRN, HSK, OUN, PEL, TOL"),
                fault(
                        "blank cell that is required",
                        round -> round.planted("sites.csv", "sites.csv"),
                        "line 11 (OUN-01), column east_m: the cell is blank",
                        "this column is required"),
                fault(
                        "swapped longitude and latitude",
                        round -> round.planted("consents.csv", "consents.csv"),
                        "about 10 000 km from the project area",
                        "swapping the columns puts it 240 m from BRN-01"),
                fault(
                        "bad DMN cell",
                        round -> round.planted("method.dmn", "method.dmn"),
                        "(rule 5), column conductivity_us_cm",
                        "at character 1",
                        "[15..600]"),
                fault(
                        "unknown DMN input",
                        round -> round.planted("method.dmn", "method.dmn"),
                        "the input \"flow\" is no condition of a site",
                        "depth_velocity_m2s"),
                fault(
                        "item twice",
                        round -> round.planted("store.csv", "store.csv"),
                        "line 3 (E1)",
                        "stands on line 2"),
                fault(
                        "certificate twice",
                        round -> round.planted("certificates.csv", "certificates.csv"),
                        "until 2028-09-02 (line 2) and until 2027-09-07"),
                fault(
                        "ambiguous date",
                        round -> round.planted("certificates.csv", "certificates.csv"),
                        "\"07/09/2027\" can be 7 September 2027 or 9 July 2027",
                        "year-month-day"),
                fault("missing table", round -> round.without("sites.csv"), "sites.csv"),
                fault("missing header", round -> round.without("round.json"), "round.json"));
    }

    private static Fault fault(String name, UnaryOperator<TempRound> spoil, String... mustSay) {
        return new Fault(name, spoil, List.of(mustSay));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void getsAClearAnswerAndChangesNothing(Fault fault) {
        TempRound round = fault.spoil().apply(TempRound.copyOf("ilvermoor", temp.resolve("round")));
        SortedMap<String, String> before = round.content();

        CommandRun run = CommandRun.of("week", "plan", round.toString(), "--iterations", "0");

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains(fault.mustSay()).contains("Nothing was planned or written");
        assertThat(run.out()).as("no half result").isEmpty();
        assertThat(run.err()).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(round.content()).isEqualTo(before);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void isOneJsonDocumentToo(Fault fault) {
        TempRound round = fault.spoil().apply(TempRound.copyOf("ilvermoor", temp.resolve("round")));

        CommandRun run = CommandRun.of("check", round.toString(), "--json");

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.err()).isEmpty();
        assertThat(run.json().path("problems").findValuesAsText("severity")).contains("ERROR");
        assertThat(run.json().path("result")).isEmpty();
    }

    @Test
    void aPathWithSpacesAndUmlautsIsNoFault() {
        TempRound round = TempRound.copyOf("ilvermoor", temp.resolve("Grüne Flüsse 2027"));

        CommandRun run = CommandRun.of("check", round.toString());

        assertThat(run.code()).isEqualTo(ExitCode.FINE);
        assertThat(run.words()).contains("Next: wadeplan week plan \"" + round + "\"");
    }

    @Test
    void aRepairHoldsOnlyWhereItWasAcceptedAndIsNeverSilent() {
        TempRound round = TempRound.copyOf("ilvermoor", temp.resolve("round")).planted("streams.gpkg", "streams.gpkg");
        SortedMap<String, String> before = round.content();

        CommandRun one = CommandRun.of("reach", "lay", round.toString(), "--accept", "reverse:OUN");
        CommandRun all = CommandRun.of(
                "reach",
                "lay",
                round.toString(),
                "--accept=reverse:OUN",
                "--accept=join-gap:HSK",
                "--accept=drop-spike:TOL");

        assertThat(one.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(one.words())
                .contains("turned round, as accepted by reverse:OUN")
                .contains("accept the repair with --accept join-gap:HSK");
        assertThat(all.code()).isEqualTo(ExitCode.FINE);
        assertThat(all.words())
                .contains("14 reaches of 150 m")
                .contains("as accepted by reverse:OUN")
                .contains("as accepted by join-gap:HSK")
                .contains("as accepted by drop-spike:TOL");
        assertThat(round.content()).isEqualTo(before);
    }

    @ParameterizedTest
    @MethodSource("notFolders")
    void whatIsNoRoundFolderIsSaid(String folder, String mustSay) {
        CommandRun run = CommandRun.of("check", folder);

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains(mustSay).contains("a round folder");
    }

    static Stream<Arguments> notFolders() {
        return Stream.of(
                Arguments.of(CommandRun.PROJECT.resolve("nowhere").toString(), "there is nothing of that name"),
                Arguments.of(CommandRun.PROJECT.resolve("pom.xml").toString(), "this is a file"));
    }
}
