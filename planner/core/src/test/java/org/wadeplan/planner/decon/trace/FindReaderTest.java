package org.wadeplan.planner.decon.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Round;

/** A find that was typed in or read from a file: read whole, or refused with every fault at once. */
class FindReaderTest {

    private static final Round ROUND = DemoRound.troubled();

    @TempDir
    private Path temp;

    private static FindWords words(String water, String pest, String site, String seen) {
        return new FindWords(given(water), given(pest), given(site), given(seen), Optional.empty());
    }

    private static Optional<String> given(String word) {
        return word.isEmpty() ? Optional.empty() : Optional.of(word);
    }

    private static List<String> codes(Checked<?> checked) {
        return checked.problems().stream().map(Problem::code).sorted().toList();
    }

    private Checked<FindWords> event(String text) throws IOException {
        return FindEvent.read(Files.writeString(temp.resolve("event.json"), text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-09-07T17:20",
                "2027-09-07 17:20",
                "2027-09-07T17:20:00",
                "2027-09-07T17:20:00Z",
                "2027-09-07T19:20+02:00"
            })
    void aTimeMayBeLocalOrAnInstant(String seen) {
        assertThat(FindReader.read(ROUND, words("TOL", "LTW", "TOL-01", seen), "find")
                        .value())
                .contains(new Find(
                        "TOL", "LTW", Instant.parse("2027-09-07T17:20:00Z"), Optional.of("TOL-01"), Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource({
        "TLO, LTW, '', 2027-09-07T17:20, find-unknown-water",
        "TOL, XXX, '', 2027-09-07T17:20, find-unknown-pest",
        "TOL, LTW, NOWHERE, 2027-09-07T17:20, find-unknown-site",
        "TOL, LTW, BRN-01, 2027-09-07T17:20, find-site-elsewhere",
        "TOL, LTW, '', 07/09/2027 17:20, find-time-unreadable",
        "TOL, LTW, '', 2027-09-05T23:59, find-outside-the-week",
        "TOL, LTW, '', 2027-09-15T00:00, find-outside-the-week",
        "'', LTW, '', 2027-09-07T17:20, find-incomplete"
    })
    void aFaultyFindIsRefusedWithItsReason(String water, String pest, String site, String seen, String code) {
        Checked<Find> read = FindReader.read(ROUND, words(water, pest, site, seen), "find");

        assertThat(codes(read)).containsExactly(code);
        assertThat(read.value()).isEmpty();
    }

    @Test
    void everyFaultIsSaidAtOnce() {
        assertThat(codes(FindReader.read(ROUND, words("TLO", "XXX", "NOWHERE", "yesterday"), "find")))
                .containsExactly(
                        "find-time-unreadable", "find-unknown-pest", "find-unknown-site", "find-unknown-water");
    }

    @Test
    void theDemosEventFileIsRead() {
        Checked<FindWords> read = FindEvent.read(
                DemoRound.folder("ilvermoor-troubled").resolve("events").resolve("09-lattice-weed-at-tol-01.json"));

        assertThat(read.value())
                .contains(new FindWords(
                        Optional.of("TOL"),
                        Optional.of("LTW"),
                        Optional.of("TOL-01"),
                        Optional.of("2027-09-07T17:20:00Z"),
                        Optional.of("fragments on a pole net; new to the Tollow")));
    }

    @Test
    void anotherEventIsRefusedWithAllThatItLacks() throws IOException {
        assertThat(codes(event(
                        "{\"formatVersion\": 2, \"kind\": \"rain\", \"at\": 5, \"facts\": {\"status\": \"free\"}}")))
                .containsExactly(
                        "event-field", "event-field", "event-field", "event-kind", "event-status", "event-version");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "not json", "[1, 2]", "{\"kind\": "})
    void whatIsNoEventIsRefusedInASentence(String text) throws IOException {
        assertThat(codes(event(text))).containsExactly("event-unreadable");
    }

    @Test
    void aFileThatIsNotThereIsRefused() {
        assertThat(codes(FindEvent.read(temp.resolve("missing.json")))).containsExactly("event-unreadable");
    }
}
