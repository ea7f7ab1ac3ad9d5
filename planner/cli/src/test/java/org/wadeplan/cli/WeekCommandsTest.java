package org.wadeplan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.SortedMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A week from end to end: planned twice, checked, spoiled by hand and checked again. */
class WeekCommandsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String BUDGET = "300";

    @TempDir
    static Path temp;

    private static TempRound round;
    private static CommandRun first;
    private static CommandRun second;

    @BeforeAll
    static void planTwice() {
        round = TempRound.copyOf("ilvermoor", temp.resolve("round"));
        first = CommandRun.of("week", "plan", round.toString(), "--iterations", BUDGET);
        second = CommandRun.of("week", "plan", round.toString(), "--iterations", BUDGET);
    }

    @Test
    void planWritesThePlanAndNamesWhatComesNext() {
        assertThat(first.code()).isIn(ExitCode.FINE, ExitCode.FINDINGS);
        assertThat(first.words())
                .contains("Written: " + plan())
                .contains("Next: wadeplan week verify " + round)
                .doesNotContain("Written: " + plan() + " (the previous one");
        assertThat(plan()).exists();
    }

    @Test
    void planKeepsThePreviousOneAndGivesTheSameBytes() {
        assertThat(second.words()).contains("the previous one is plan.json.bak");
        assertThat(round.folder().resolve("plan.json.bak")).hasSameBinaryContentAs(plan());
    }

    @Test
    void progressIsAtMostOneLineATenth() {
        assertThat(first.err().lines().filter(line -> line.startsWith("order of visits")))
                .hasSizeLessThanOrEqualTo(11)
                .doesNotHaveDuplicates();
    }

    @Test
    void noLineIsTooWideForATerminal() {
        assertThat(first.out().lines().filter(line -> !line.contains(temp.toString())))
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(160));
    }

    @Test
    void noWriteWritesNothing() {
        TempRound untouched = TempRound.copyOf("ilvermoor", temp.resolve("no-write"));
        SortedMap<String, String> before = untouched.content();

        CommandRun run = CommandRun.of("week", "plan", untouched.toString(), "--no-write", "--iterations", "0");

        assertThat(run.words()).contains("plan.json was not written");
        assertThat(untouched.content()).isEqualTo(before);
    }

    @Test
    void verifyFindsNothingAgainstThePlan() {
        CommandRun run = CommandRun.of("week", "verify", round.toString());

        assertThat(run.words()).contains("No broken rule was found");
        assertThat(run.code()).isEqualTo(ExitCode.FINE);
    }

    @Test
    void verifyNamesAVisitMovedByThreeHours() {
        CommandRun run = verifyAfter("moved", plan -> {
            ObjectNode visit = firstVisit(plan);
            visit.put("start", later(visit.path("start")));
            visit.put("end", later(visit.path("end")));
        });

        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.words())
                .contains("the plan was changed after Wadeplan wrote it")
                .containsPattern("crew A 2027-09-06: VISIT starts at \\S+ \\S+, the one before ends at")
                .contains("no gap and no overlap");
    }

    @Test
    void verifyNamesAVehicleThatTwoCrewsHave() {
        CommandRun run = verifyAfter("swapped", plan -> {
            JsonNode days = plan.path("plan").path("week").path("crewDays");
            ObjectNode day = (ObjectNode) days.path(0);
            assertThat(days.path(1).path("date")).isEqualTo(day.path("date"));
            day.put("vehicle", days.path(1).path("vehicle").asText());
        });

        assertThat(run.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(run.words()).contains("V2").contains("ERROR");
    }

    @Test
    void verifySaysThatAFileIsNoPlan() throws IOException {
        Path file = Files.writeString(temp.resolve("half.json"), "{\"formatVersion\": 1, \"plan\": {");

        CommandRun run = CommandRun.of("week", "verify", round.toString(), "--plan", file.toString());

        assertThat(run.code()).isEqualTo(ExitCode.INVALID_INPUT);
        assertThat(run.words()).contains("half.json: not a plan").doesNotContain("Exception");
    }

    private static CommandRun verifyAfter(String name, Consumer<JsonNode> edit) {
        try {
            JsonNode plan = JSON.readTree(plan().toFile());
            edit.accept(plan);
            Path edited = temp.resolve(name + ".json");
            JSON.writeValue(edited.toFile(), plan);
            return CommandRun.of("week", "verify", round.toString(), "--plan", edited.toString());
        } catch (IOException fault) {
            throw new IllegalStateException(fault);
        }
    }

    private static ObjectNode firstVisit(JsonNode plan) {
        for (JsonNode activity :
                plan.path("plan").path("week").path("crewDays").path(0).path("activities")) {
            if (activity.path("kind").asText().equals("VISIT")) {
                return (ObjectNode) activity;
            }
        }
        throw new IllegalStateException("The first crew-day has no visit");
    }

    private static String later(JsonNode instant) {
        return Instant.parse(instant.asText()).plus(3, ChronoUnit.HOURS).toString();
    }

    private static Path plan() {
        return round.folder().resolve("plan.json");
    }
}
