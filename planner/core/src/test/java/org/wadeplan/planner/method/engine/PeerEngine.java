package org.wadeplan.planner.method.engine;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.camunda.bpm.dmn.engine.DmnDecision;
import org.camunda.bpm.dmn.engine.DmnDecisionTableResult;
import org.camunda.bpm.dmn.engine.DmnEngine;
import org.camunda.bpm.dmn.engine.DmnEngineConfiguration;
import org.camunda.bpm.dmn.engine.impl.hitpolicy.DmnHitPolicyException;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.DmnWriter;

/** A decision table in the DMN engine that serves as a reference, camunda-engine-dmn of Maven Central. */
public final class PeerEngine {

    private static final DmnEngine ENGINE =
            DmnEngineConfiguration.createDefaultDmnEngineConfiguration().buildEngine();

    private final DmnDecision decision;

    private PeerEngine(DmnDecision decision) {
        this.decision = decision;
    }

    /** The engine reads the DMN file that we write. */
    public static PeerEngine of(DecisionTable table) {
        byte[] file = DmnWriter.text(table).getBytes(StandardCharsets.UTF_8);
        String id = table.id().isEmpty() ? "decision" : table.id();
        return new PeerEngine(ENGINE.parseDecision(id, new ByteArrayInputStream(file)));
    }

    /** The results in their order, none where no rule matches; empty where the hit policy forbids what matched. */
    public Optional<List<String>> results(Map<String, CaseValue> values) {
        try {
            return Optional.of(evaluated(variables(values)).collectEntries("method").stream()
                    .map(String::valueOf)
                    .toList());
        } catch (DmnHitPolicyException forbidden) {
            return Optional.empty();
        }
    }

    /** One evaluation, for measuring. */
    public DmnDecisionTableResult evaluated(Map<String, Object> variables) {
        return ENGINE.evaluateDecisionTable(decision, variables);
    }

    /** Values as the engine takes them. */
    public static Map<String, Object> variables(Map<String, CaseValue> values) {
        Map<String, Object> variables = new LinkedHashMap<>();
        values.forEach((name, value) -> variables.put(name, plain(value)));
        return variables;
    }

    private static Object plain(CaseValue value) {
        if (value instanceof CaseValue.Quantity number) {
            return number.value();
        }
        return value instanceof CaseValue.Text text ? text.value() : ((CaseValue.Truth) value).value();
    }
}
