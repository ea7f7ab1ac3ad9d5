package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodFindings;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;

/** Methods that a person decides in round.json, and a table that fails sites. */
class MethodOverridesTest {

    private static final String KEY = "\"acceptedRepairs\": [],";

    @TempDir
    Path temp;

    @Test
    void aPlanIsRefusedWhereTheTableFailsSitesThatNobodyDecided() {
        Round round = received("");
        assertThat(RoundPlanner.refusals(round))
                .extracting(
                        problem -> problem.code() + " " + problem.place().row().orElse(""))
                .containsExactly("method-clash site BRN-02", "method-gap site BRN-03", "method-gap site HSK-02");
    }

    @Test
    void withAReasonForEachOfThemThePlanMayBeMadeAndTheReasonIsPrinted() {
        Round round = received(
                override("BRN-02", "EFISH") + ", " + override("BRN-03", "TRAP") + ", " + override("HSK-02", "SPOT"));
        assertThat(RoundPlanner.refusals(round)).isEmpty();
        List<MethodDecision> decisions = MethodChooser.decide(round);
        MethodDecision pools = decisions.get(1);
        assertThat(MethodWords.rule(pools)).isEqualTo("override");
        assertThat(MethodWords.method(pools)).isEqualTo("EFISH");
        assertThat(pools.chosen().orElseThrow().crewMin()).hasValue(3);
        assertThat(MethodWords.why(pools))
                .isEqualTo("by override, because: agreed; the table says: rules 5 and 12 match at once,"
                        + " with EFISH and TRAP");
        assertThat(MethodFindings.of(round, decisions))
                .extracting(Problem::code)
                .containsOnly("method-overridden");
    }

    @Test
    void anOverrideNamesASiteOnceAndAMethodThatIsKnown() {
        BrokenRound round = BrokenRound.in(temp)
                .with(
                        "round.json",
                        KEY,
                        KEY + " \"methodOverrides\": [" + override("BRN-02", "EFISH") + ", "
                                + override("BRN-02", "NETS") + ", " + override("BRN-99", "TRAP") + "],");
        assertThat(round.read().problems())
                .extracting(Problem::code)
                .contains("override-twice", "override-method-unknown", "override-site-unknown");
    }

    @Test
    void anOverrideWithoutAReasonIsNone() {
        BrokenRound round = BrokenRound.in(temp)
                .with(
                        "round.json",
                        KEY,
                        KEY + " \"methodOverrides\": [{\"site\": \"BRN-02\", \"method\": \"EFISH\","
                                + " \"reason\": \"\"}],");
        assertThat(round.sentences()).anyMatch(words -> words.contains("methodOverrides[1].reason: the text is empty"));
    }

    private Round received(String overrides) {
        return BrokenRound.in(temp)
                .with("round.json", "\"method.dmn\"", "\"method_received.dmn\"")
                .with("round.json", KEY, KEY + " \"methodOverrides\": [" + overrides + "],")
                .read()
                .value()
                .orElseThrow();
    }

    private static String override(String site, String method) {
        return "{\"site\": \"" + site + "\", \"method\": \"" + method + "\", \"reason\": \"agreed\"}";
    }
}
