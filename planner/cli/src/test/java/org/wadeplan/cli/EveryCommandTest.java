package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Every command of the tree: it is described, answers for help, and its JSON has the one shape. */
class EveryCommandTest {

    @TempDir
    Path temp;

    /** Further arguments of every command that takes a round; OUT stands for a place to write to. */
    private static final Map<String, List<String>> ROUND_COMMANDS = roundCommands();

    private static Map<String, List<String>> roundCommands() {
        List<String> quick = List.of("--iterations", "0");
        Map<String, List<String>> commands = new LinkedHashMap<>();
        commands.put("check", List.of());
        commands.put("reach lay", List.of());
        commands.put("reach draw", List.of("--size", "5", "--out", "OUT"));
        commands.put("reach search", List.of("--out", "OUT"));
        commands.put("method decide", List.of());
        commands.put("method margin", List.of());
        commands.put("effort plan", List.of());
        commands.put("decon steps", quick);
        commands.put("decon release", List.of("--iterations", "0", "--kit-set", "K2", "--water", "BRN"));
        commands.put("decon evidence", List.of());
        commands.put("decon exposure", quick);
        commands.put(
                "decon trace",
                List.of("--iterations", "0", "--water", "TOL", "--pest", "LTW", "--seen", "2027-09-07T17:20"));
        commands.put("week plan", quick);
        commands.put("week verify", List.of("--plan", "PLAN"));
        commands.put("kit list", quick);
        commands.put(
                "kit tick",
                List.of(
                        "--iterations",
                        "0",
                        "--crew",
                        "A",
                        "--date",
                        "2027-09-06",
                        "--item",
                        "V1",
                        "--at",
                        "2027-09-06T07:00:00Z"));
        commands.put("hazard brief", quick);
        commands.put("pack", List.of("--iterations", "0", "--out", "OUT"));
        for (String kind : List.of("gpx", "ics", "gpkg", "geojson")) {
            commands.put("share " + kind, List.of("--iterations", "0", "--out", "OUT." + kind));
        }
        return commands;
    }

    static Stream<String> roundCommandWords() {
        return ROUND_COMMANDS.keySet().stream();
    }

    static Stream<String> allCommandWords() {
        return leaves(tree(), "").stream();
    }

    private static CommandLine tree() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return Commands.all(new Console(nowhere, nowhere, Clock.systemUTC()));
    }

    private static List<String> leaves(CommandLine command, String words) {
        if (command.getSubcommands().isEmpty()) {
            return List.of(words.strip());
        }
        List<String> leaves = new ArrayList<>();
        command.getSubcommands().forEach((name, sub) -> leaves.addAll(leaves(sub, words + " " + name)));
        return leaves;
    }

    @Test
    void everyCommandIsTried() {
        TreeSet<String> tried = new TreeSet<>(ROUND_COMMANDS.keySet());
        // These take no round: DemoCommandTest, WrongUseTest, EffortCommandsTest, MethodTableCommandsTest run them.
        tried.addAll(List.of("demo", "window", "help", "effort detect", "effort sums"));
        tried.addAll(List.of("method audit", "method compare", "method convert", "method try"));
        assertThat(new TreeSet<>(leaves(tree(), ""))).isEqualTo(tried);
    }

    @ParameterizedTest
    @MethodSource("allCommandWords")
    void saysWhatItIsFor(String words) {
        CommandLine command = tree();
        for (String word : words.split(" ", -1)) {
            command = Objects.requireNonNull(command.getSubcommands().get(word), words);
            assertThat(command.getCommandSpec().usageMessage().description())
                    .as(words)
                    .isNotEmpty();
        }
        assertThat(command.getCommandSpec().options()).allSatisfy(option -> assertThat(option.description())
                .as(words + " " + option.longestName())
                .isNotEmpty());
    }

    @ParameterizedTest
    @MethodSource("roundCommandWords")
    void printsOneDocumentOfTheOneShape(String words) {
        TempRound round = TempRound.copyOf("ilvermoor", temp.resolve("round"));
        if (words.equals("week verify")) {
            CommandRun.of("week", "plan", round.toString(), "--iterations", "0");
        }

        CommandRun run = CommandRun.of(arguments(words, round, "--json"));

        JsonNode document = run.json();
        List<String> names = new ArrayList<>();
        document.fieldNames().forEachRemaining(names::add);
        assertThat(names).containsExactly("formatVersion", "command", "round", "problems", "result");
        assertThat(document.path("formatVersion").asInt()).isEqualTo(1);
        assertThat(document.path("command").asText()).isEqualTo("wadeplan " + words);
        assertThat(document.path("round").asText()).isEqualTo("ilvermoor-2027");
        assertThat(document.path("problems").isArray()).isTrue();
        assertThat(run.code()).isNotIn(ExitCode.USAGE, ExitCode.INVALID_INPUT, ExitCode.INTERNAL_FAULT);
        assertThat(run.err().lines()).as("progress only").allMatch(EveryCommandTest::isProgress);
    }

    @ParameterizedTest
    @MethodSource("roundCommandWords")
    void refusesAFolderThatIsNone(String words) {
        CommandRun run = CommandRun.of(arguments(words, new TempRound(temp.resolve("none")), "--json"));

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.json().path("problems").path(0).path("code").asText()).isEqualTo("no-round-folder");
        assertThat(TempRound.content(temp)).isEmpty();
    }

    private String[] arguments(String words, TempRound round, String last) {
        List<String> arguments = new ArrayList<>(Arrays.asList(words.split(" ", -1)));
        arguments.add(round.toString());
        for (String further : ROUND_COMMANDS.getOrDefault(words, List.of())) {
            arguments.add(further.replace("OUT", temp.resolve("out").toString())
                    .replace("PLAN", round.folder().resolve("plan.json").toString()));
        }
        arguments.add(last);
        return arguments.toArray(String[]::new);
    }

    private static boolean isProgress(String line) {
        return List.of("reaches", "methods and effort", "kit and turnaround", "loads and briefings")
                        .contains(line)
                || line.matches(
                        "(order of visits|distances along the streams|distances across the ground|limits|candidates), \\d+ %");
    }
}
