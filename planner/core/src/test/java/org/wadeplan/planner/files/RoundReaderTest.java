package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;

class RoundReaderTest {

    @TempDir
    Path temp;

    private static List<String> sentences(Checked<Round> checked) {
        return checked.problems().stream().map(Problem::sentence).toList();
    }

    @Test
    void readsTheResolvedDemoRoundWithoutAnyProblem() {
        assertThat(sentences(DemoRound.checked("ilvermoor"))).isEmpty();
    }

    @Test
    void readsTheTroubledDemoRoundWithoutAnError() {
        assertThat(DemoRound.checked("ilvermoor-troubled").problems().stream()
                        .filter(problem -> problem.severity() == Severity.ERROR)
                        .map(Problem::sentence))
                .isEmpty();
    }

    @Test
    void joinsPartsToMethodsInOrderAndCertificatesToItems() {
        Round round = DemoRound.resolved();
        assertThat(round.method("TRAP").map(Method::parts).orElseThrow().stream()
                        .map(MethodPart::part))
                .containsExactly(VisitPart.SET, VisitPart.LIFT);
        assertThat(round.store().items().stream()
                        .filter(item -> item.id().equals("E2"))
                        .flatMap(item -> item.certificates().stream())
                        .map(certificate -> certificate.certificate() + " " + certificate.validUntil()))
                .containsExactly("service 2028-03-14");
    }

    @Test
    void ordersPastVisitsOldestFirst() {
        assertThat(DemoRound.resolved().pastVisits())
                .isSortedAccordingTo((a, b) -> a.date().compareTo(b.date()));
    }

    @Test
    void keepsBlankCellsUnknown() {
        assertThat(DemoRound.resolved()
                        .site("TOL-02")
                        .orElseThrow()
                        .conditions()
                        .conductivityUsCm())
                .isEmpty();
    }

    @Test
    void findsEverySitesWater() {
        Round round = DemoRound.resolved();
        assertThat(round.sites())
                .allSatisfy(site -> assertThat(round.waterOf(site)).isPresent());
    }

    @Test
    void reportsTheFaultsOfAllFilesAtOnce() {
        List<String> sentences = BrokenRound.in(temp)
                .whole("round.json", "{")
                .with("sites.csv", "BR02,501880,", "BR02,,")
                .without("pests.csv")
                .whole("parcels.gpkg", "")
                .whole("method.dmn", "<table/>")
                .plus("crew_days.csv", "2027-09-06,C,oskar,V2,,,")
                .sentences();
        assertThat(sentences.stream().map(sentence -> sentence.replaceAll("[:,].*", "")))
                .contains(
                        "ERROR json-broken round.json",
                        "ERROR blank sites.csv",
                        "ERROR file-missing pests.csv",
                        "ERROR person-twice crew_days.csv",
                        "WARNING vehicle-twice crew_days.csv")
                .anyMatch(sentence -> sentence.endsWith(" method.dmn"));
    }

    @Test
    void aBrokenRowLeavesTheRoundThereToBeLookedAt() {
        Checked<Round> checked =
                BrokenRound.in(temp).with("sites.csv", "BR02,501880,", "BR02,,").read();
        assertThat(checked.hasErrors()).isTrue();
        assertThat(checked.value().orElseThrow().site("BRN-02")).isEmpty();
        assertThat(checked.value().orElseThrow().site("BRN-01")).isPresent();
    }

    @Test
    void saysThatAFolderIsMissing() {
        Path missing = temp.resolve("nowhere");
        assertThat(RoundReader.read(missing).problems())
                .extracting(Problem::code)
                .containsExactly("no-round-folder");
        assertThat(sentences(RoundReader.read(missing)))
                .containsExactly(missing + ": there is nothing of that name. Allowed: a round folder: one that holds"
                        + " round.json. Do: check the path");
    }

    @Test
    void saysThatAFileIsNoFolder() throws IOException {
        Path file = Files.writeString(temp.resolve("round.json"), "{}");
        assertThat(sentences(RoundReader.read(file)))
                .containsExactly(file
                        + ": this is a file. Allowed: a round folder: one that holds round.json. Do: check the path");
    }

    @Test
    void saysThatAFolderStandsWhereAFileShouldBe() throws IOException {
        BrokenRound round = BrokenRound.in(temp).without("pests.csv");
        Files.createDirectory(round.file("pests.csv"));
        assertThat(round.sentences())
                .containsExactly("ERROR not-a-file pests.csv: there is a folder of that name where a file should be."
                        + " Allowed: a file. Do: move it");
    }

    @Test
    void readsAFolderWhosePathHasSpacesAndUmlauts() throws IOException {
        assertThat(BrokenRound.in(Files.createDirectory(temp.resolve("Bäche im Süden 2027")))
                        .sentences())
                .isEmpty();
    }

    @Test
    void doesWithoutTheTablesThatMayBeAbsent() {
        BrokenRound round = BrokenRound.in(temp);
        for (String table : List.of("barriers", "forecast", "past_visits", "consents_private", "people_private")) {
            round.without(table + ".csv");
        }
        assertThat(round.sentences()).isEmpty();
        assertThat(round.read().value().orElseThrow().forecast()).isEmpty();
    }

    @Test
    void anAbsentTableHasNoneOfTheIdsThatRefersToIt() {
        assertThat(BrokenRound.in(temp).without("tides.csv").sentences())
                .containsExactly(
                        "ERROR unknown-code waters.csv, line 7 (PEL), column tide_place: \"PELL\" is not known."
                                + " Allowed: a place of tides.csv, which has none. Do: add it there, or mend it here");
    }

    @Test
    void neverReadsPrivateFiles() throws IOException {
        BrokenRound round =
                BrokenRound.in(temp).whole("people_private.csv", "person,\"").without("consents_private.csv");
        Files.createDirectory(round.file("consents_private.csv"));
        assertThat(round.sentences()).isEmpty();
    }

    @Test
    void theFingerprintCoversWhatAPlanIsMadeFromAndNothingElse() throws IOException {
        BrokenRound round = BrokenRound.in(temp);
        String before = whole(round);
        round.whole("people_private.csv", "changed").whole("plan.json", "{}").whole("sites.csv.bak", "old");
        round.whole("README.md", "changed").whole("datapackage.json", "{}");
        Files.createDirectory(round.file("events"));
        round.whole("events/rain.json", "{}");
        assertThat(whole(round)).isEqualTo(before);
        assertThat(whole(round.with("pests.csv", "grey-slick alga", "grey-slick algae")))
                .isNotEqualTo(before);
    }

    /** Expected: {@code printf abc | sha256sum}, the worked example of FIPS 180-4 (NIST, SHA256.pdf, one block). */
    @Test
    void theFingerprintOfAFileIsItsSha256() {
        BrokenRound round = BrokenRound.in(temp).whole("pests.csv", "abc");
        assertThat(round.read().value().orElseThrow().hash().byFile())
                .containsEntry("pests.csv", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")
                .containsKeys("round.json", "streams.gpkg", "method.dmn")
                .doesNotContainKeys("hazards.json", "people_private.csv");
    }

    private static String whole(BrokenRound round) {
        return round.read().value().orElseThrow().hash().whole();
    }

    @Test
    void neverWrites() throws IOException {
        BrokenRound round = BrokenRound.in(temp);
        Map<String, FileTime> before = times(round.folder());
        round.read();
        assertThat(times(round.folder())).isEqualTo(before);
    }

    private static Map<String, FileTime> times(Path folder) throws IOException {
        Map<String, FileTime> times = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.toList()) {
                times.put(folder.relativize(path).toString(), Files.getLastModifiedTime(path));
            }
        }
        return times;
    }

    @Test
    void aRegisterInTheFolderReplacesTheShippedOne() {
        assertThat(BrokenRound.in(temp).whole("hazards.json", "{").sentences())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("ERROR")
                .contains("hazards.json");
    }

    @Test
    @Timeout(20)
    void answersQuicklyToAGigabyteInPlaceOfAMap() {
        assertThat(sized("streams.gpkg", 3_000_000_000L).sentences())
                .containsExactly(
                        "ERROR file-too-large streams.gpkg: the file has 3000 MB. Allowed: at most 2000 MB. Do:"
                                + " cut it down to the area and the columns of the round; a file of this size is probably"
                                + " another one");
    }

    @Test
    @Timeout(20)
    void answersQuicklyToALargeMapThatIsNone() {
        assertThat(sized("streams.gpkg", 1_000_000_000L).sentences())
                .containsExactly("ERROR not-geopackage streams.gpkg: the file is not a GeoPackage: its first bytes are"
                        + " something else. Allowed: a GeoPackage (.gpkg). Do: export the layer again as GeoPackage");
    }

    @Test
    void refusesATableOfMoreThanTwentyMegabytes() {
        assertThat(sized("forecast.csv", 20_000_001L).sentences())
                .containsExactly("ERROR file-too-large forecast.csv: the file has 20 MB. Allowed: at most 20 MB. Do:"
                        + " cut it down to the area and the columns of the round; a file of this size is probably"
                        + " another one");
    }

    /** A sparse file: long without taking up the disk. */
    private BrokenRound sized(String file, long bytes) {
        BrokenRound round = BrokenRound.in(temp);
        try (RandomAccessFile sparse = new RandomAccessFile(round.file(file).toFile(), "rw")) {
            sparse.write("no map at all, and then nothing".getBytes(StandardCharsets.UTF_8));
            sparse.setLength(bytes);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return round;
    }

    @Test
    void tellsWhatItWouldTakeToAcceptARepairAndThenReads() throws IOException {
        BrokenRound round = BrokenRound.in(temp);
        Files.copy(
                DemoRound.folder("ilvermoor-troubled").resolve("bad/streams.gpkg"),
                round.without("streams.gpkg").file("streams.gpkg"));
        assertThat(round.read().hasErrors()).isTrue();
        Checked<Round> repaired =
                RoundReader.read(round.folder(), Set.of("reverse:OUN", "join-gap:HSK", "drop-spike:TOL"));
        assertThat(repaired.problems().stream()
                        .filter(problem -> problem.severity() == Severity.ERROR)
                        .map(Problem::sentence))
                .isEmpty();
    }

    @Test
    void aKitSetHoldsWhatOneOfItsItemsHolds() {
        BrokenRound round = BrokenRound.in(temp);
        String store = round.text("store.csv");
        String header = store.substring(0, store.indexOf('\n'));
        String waders = store.lines()
                .filter(line -> line.startsWith("K1-WADER,"))
                .findFirst()
                .orElseThrow();
        round.whole("store.csv", header + ",exposed_to\n" + waders + ",TOL\n");
        Round read = RoundReader.read(round.folder()).value().orElseThrow();

        assertThat(read.store().kitSet("K1").orElseThrow().exposedTo()).containsExactly("TOL");
        assertThat(read.store().kitSet("K2").orElseThrow().exposedTo()).isEmpty();
    }
}
