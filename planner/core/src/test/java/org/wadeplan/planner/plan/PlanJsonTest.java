package org.wadeplan.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.week.Progress;

class PlanJsonTest {

    @TempDir
    Path folder;

    private final RoundPlan plan =
            RoundPlanner.plan(DemoRound.resolved(), new PlanOptions(java.util.OptionalLong.empty(), 50), Progress.NONE);

    @Test
    void aPlanReadBackIsTheSamePlan() throws Exception {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, PlanJson.text(plan));

        RoundPlan back = PlanJson.read(file).value().orElseThrow();

        assertThat(PlanJson.text(back)).isEqualTo(PlanJson.text(plan));
        assertThat(PlanJson.labelFits(back)).isTrue();
    }

    @Test
    void anEditedPlanNoLongerFitsItsLabel() throws Exception {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, PlanJson.text(plan).replaceFirst("\"vehicle\" : \"V1\"", "\"vehicle\" : \"V2\""));

        assertThat(PlanJson.labelFits(PlanJson.read(file).value().orElseThrow()))
                .isFalse();
    }

    @Test
    void aHoleInAPlanIsRefusedAndNamed() throws Exception {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, PlanJson.text(plan).replaceFirst("\"people\" : \\[[^\\]]*\\]", "\"people\" : null"));

        List<Problem> problems = PlanJson.read(file).problems();

        assertThat(problems).extracting(Problem::code).containsExactly("plan-json");
        assertThat(problems.get(0).found()).contains("people").doesNotContain("REDACTED");
    }

    @Test
    void whatIsNoPlanIsRefusedWithItsPlace() throws Exception {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, "{\"formatVersion\": 1, \"plan\": {\"round\": ");

        assertThat(PlanJson.read(file).problems()).extracting(Problem::code).containsExactly("plan-json");
        assertThat(PlanJson.read(file).problems().get(0).found()).doesNotContain("REDACTED");
        assertThat(PlanJson.read(folder.resolve("other.json")).problems())
                .extracting(Problem::code)
                .containsExactly("plan-missing");
    }
}
