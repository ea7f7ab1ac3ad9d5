package org.wadeplan.hazards.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.hazards.limits.ReadingEase;

class HazardRegisterTest {

    private static final HazardRegister SHIPPED = HazardRegister.shipped();

    private static final String GOOD_ROW = """
            {"id": "Q1", "version": "1", "title": "Bog", "consequence": 4, "likelihood": 3,
             "when": [[{"activity": "wading"}, {"attribute": "silt_depth_m", "comparison": ">", "value": 0.3, "whenUnknown": "counts"}]],
             "controls": [{"level": "ppe", "owner": "everyone", "text": "Carry a pole."},
                          {"level": "eliminate", "owner": "leader", "text": "Go round."}],
             "stops": [{"say": "Stop at the knee.", "source": "local setting"}],
             "sign": {"words": "deep mud"}, "source": "local setting"}""";

    static Stream<Hazard> rows() {
        return SHIPPED.hazards().stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyShippedRowCanBeReadAloudAndTraced(Hazard row) {
        assertThat(row.source()).isNotBlank();
        assertThat(row.version()).isNotBlank();
        assertThat(row.controls()).isNotEmpty();
        assertThat(row.controls()).extracting(Control::level).isSorted();
        assertThat(row.stops()).extracting(StopRule::source).noneMatch(String::isBlank);
        assertThat(spoken(row)).allSatisfy(line -> {
            assertThat(ReadingEase.words(line)).as(line).isLessThan(25);
            assertThat(line).as(line).doesNotContainPattern("(?i)\\bsafe(ly)?\\b");
        });
    }

    @Test
    void theShippedWordsSuitSchoolGradeSixToEightAtMost() {
        // plain-language practice for safety talks: grade 6 to 8 (common practice)
        String text = String.join(
                " ",
                rows().flatMap(row -> Stream.concat(
                                row.controls().stream().map(Control::text),
                                row.stops().stream().map(StopRule::say)))
                        .toList());
        assertThat(ReadingEase.grade(ReadingEase.count(text)).value().orElseThrow())
                .isLessThan(6);
    }

    @Test
    void deadlyRowsAllSayWhenToStop() {
        assertThat(rows().filter(row -> row.consequence() == 5 && row.stops().isEmpty()))
                .extracting(Hazard::id)
                // its stop limits are the caps on wading, which stand above the register
                .containsExactly("W06");
    }

    @Test
    void idsAreUnique() {
        assertThat(rows().map(Hazard::id)).doesNotHaveDuplicates().hasSize(51);
    }

    @Test
    void anAgencyMayReplaceTheWholeRegister(@TempDir Path folder) throws IOException {
        Checked<HazardRegister> read = read(folder, file(GOOD_ROW));
        assertThat(read.problems()).isEmpty();
        Hazard bog = read.value().orElseThrow().hazard("Q1").orElseThrow();
        assertThat(bog.controls()).extracting(Control::level).containsExactly(ControlLevel.ELIMINATE, ControlLevel.PPE);
        assertThat(bog.trigger())
                .isEqualTo(new Trigger(List.of(List.of(
                        new Condition.Doing(Activity.WADING),
                        new Condition.Measured(Attribute.SILT_DEPTH_M, Comparison.ABOVE, 0.3, WhenUnknown.COUNTS)))));
    }

    static Stream<Arguments> aFaultIsNamedWithItsPlaceAndWhatIsAllowed() {
        return Stream.of(
                Arguments.of("\"consequence\": 4", "\"consequence\": 6", "register-number", "1 to 5"),
                Arguments.of("\"likelihood\": 3", "\"likelihood\": \"3\"", "register-number", "1 to 5"),
                Arguments.of("\"activity\": \"wading\"", "\"activity\": \"swimming\"", "register-word", "wading"),
                Arguments.of("silt_depth_m", "silt_depth_cm", "register-word", "silt_depth_m"),
                Arguments.of("\">\"", "\"over\"", "register-word", ">="),
                Arguments.of("0.3", "\"0,3\"", "register-number", "a number"),
                Arguments.of("counts", "ignore", "register-word", "counts, ask"),
                Arguments.of("\"level\": \"ppe\"", "\"level\": \"magic\"", "register-word", "eliminate"),
                Arguments.of("\"owner\": \"leader\"", "\"owner\": \"\"", "register-missing", "some text"),
                Arguments.of(
                        "{\"words\": \"deep mud\"}",
                        "{\"code\": \"W048\", \"words\": \"mud\"}",
                        "register-sign",
                        "W012"),
                Arguments.of(
                        "\"source\": \"local setting\"}", "\"sorce\": \"x\"}", "register-unknown-member", "source"),
                Arguments.of("\"Bog\"", "\" \"", "register-missing", "some text"),
                Arguments.of("Go round.", "go ".repeat(25), "register-long-line", "fewer than 25"));
    }

    @ParameterizedTest
    @MethodSource
    void aFaultIsNamedWithItsPlaceAndWhatIsAllowed(
            String good, String bad, String code, String allowed, @TempDir Path folder) throws IOException {
        assertThat(GOOD_ROW).contains(good);
        List<Problem> problems = read(folder, file(GOOD_ROW.replace(good, bad))).problems();
        assertThat(problems).anySatisfy(problem -> {
            assertThat(problem.code()).isEqualTo(code);
            assertThat(problem.expected()).contains(allowed);
            assertThat(problem.place().toString()).startsWith("hazards.json, Q1, column ");
        });
    }

    @Test
    void allFaultsAreReportedAtOnce(@TempDir Path folder) throws IOException {
        String bad =
                GOOD_ROW.replace("\"consequence\": 4", "\"consequence\": 0").replace("counts", "maybe");
        assertThat(read(folder, file(bad + "," + GOOD_ROW + "," + GOOD_ROW)).problems())
                .extracting(Problem::code)
                .contains("register-number", "register-word", "register-duplicate-id");
    }

    @ParameterizedTest
    @MethodSource
    void aFileThatIsNoRegisterIsSaidToBeNone(String content, String code, @TempDir Path folder) throws IOException {
        Checked<HazardRegister> read = read(folder, content);
        assertThat(read.hasErrors()).isTrue();
        assertThat(read.problems()).extracting(Problem::code).contains(code);
    }

    static Stream<Arguments> aFileThatIsNoRegisterIsSaidToBeNone() {
        return Stream.of(
                Arguments.of("", "register-missing"),
                Arguments.of("{\"hazards\": [", "register-not-json"),
                Arguments.of("{\"a\": 1, \"a\": 2}", "register-not-json"),
                Arguments.of("[]", "register-missing"),
                Arguments.of(file(GOOD_ROW).replace("\"format\": 1", "\"format\": 2"), "register-format"),
                Arguments.of(file(""), "register-empty"));
    }

    @Test
    void aMissingFileIsAProblemAndNotACrash(@TempDir Path folder) {
        assertThat(HazardRegister.read(folder.resolve("none.json")).problems())
                .extracting(Problem::code)
                .containsExactly("register-unreadable");
    }

    @Test
    void aSignNumberIsAlwaysPrintedWithWordsAndADoubt() {
        assertThat(SHIPPED.hazard("E01").orElseThrow().sign().label())
                .isEqualTo("electricity (ISO 7010 W012, verify against the standard)");
        assertThat(SHIPPED.hazard("W03").orElseThrow().sign().label()).isEqualTo("deep water");
    }

    private static List<String> spoken(Hazard row) {
        return Stream.of(
                        Stream.of(row.title()),
                        row.controls().stream().map(Control::text),
                        row.stops().stream().map(StopRule::say),
                        row.askOnSite().stream())
                .flatMap(lines -> lines)
                .toList();
    }

    private static String file(String rows) {
        return "{\"format\": 1, \"version\": \"a\", \"title\": \"t\", \"source\": \"s\", \"hazards\": [" + rows + "]}";
    }

    private static Checked<HazardRegister> read(Path folder, String content) throws IOException {
        Path file = folder.resolve("hazards.json");
        Files.writeString(file, content, StandardCharsets.UTF_8);
        return HazardRegister.read(file);
    }
}
