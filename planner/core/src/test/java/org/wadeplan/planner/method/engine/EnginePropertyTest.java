package org.wadeplan.planner.method.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.TableAnswer;
import org.wadeplan.planner.method.audit.RandomTables;
import org.wadeplan.planner.method.space.TableIndex;

/**
 * Random tables and cases: our answer equals that of camunda-engine-dmn 7.22.0 from Maven Central, for the hit policies
 * that it knows. It knows neither PRIORITY nor OUTPUT ORDER; cases of the compatibility kit stand for those.
 */
class EnginePropertyTest {

    private static final Logger ENGINE_LOG = Logger.getLogger("org.camunda.bpm.dmn");

    @BeforeContainer
    static void quiet() {
        ENGINE_LOG.setLevel(Level.OFF);
    }

    @Property(tries = 60)
    void everyAnswerEqualsThatOfThePeer(@ForAll("tables") DecisionTable table) {
        PeerEngine peer = PeerEngine.of(table);
        TableIndex index = TableIndex.of(table);
        List<Map<String, CaseValue>> grid = RandomTables.grid();
        for (int i = 0; i < grid.size(); i += 7) {
            Map<String, CaseValue> one = grid.get(i);
            assertThat(results(index.answer(one))).as("%s", one).isEqualTo(peer.results(one));
        }
    }

    private static Optional<List<String>> results(TableAnswer answer) {
        return answer instanceof TableAnswer.Contradiction
                ? Optional.empty()
                : Optional.of(answer.rules().stream()
                        .map(rule -> rule.outputs().get(0).orElseThrow())
                        .toList());
    }

    @Provide
    Arbitrary<DecisionTable> tables() {
        return RandomTables.tables(
                Arbitraries.of(HitPolicy.UNIQUE, HitPolicy.ANY, HitPolicy.FIRST, HitPolicy.RULE_ORDER));
    }
}
