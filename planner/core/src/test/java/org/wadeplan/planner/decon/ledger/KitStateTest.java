package org.wadeplan.planner.decon.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wadeplan.planner.decon.ledger.KitState.CLEAN_DRY;
import static org.wadeplan.planner.decon.ledger.KitState.DIRTY;
import static org.wadeplan.planner.decon.ledger.KitState.DRYING;
import static org.wadeplan.planner.decon.ledger.KitState.IN_USE;
import static org.wadeplan.planner.decon.ledger.KitState.OUT_OF_SERVICE;
import static org.wadeplan.planner.decon.ledger.KitState.RELEASED;
import static org.wadeplan.planner.decon.ledger.KitState.TREATING;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every step from one state to another, allowed and forbidden, written out once more by hand. */
class KitStateTest {

    private static final Map<KitState, Set<KitState>> ALLOWED = Map.of(
            CLEAN_DRY, Set.of(IN_USE, TREATING, OUT_OF_SERVICE),
            IN_USE, Set.of(DIRTY, OUT_OF_SERVICE),
            DIRTY, Set.of(IN_USE, TREATING, OUT_OF_SERVICE),
            TREATING, Set.of(DRYING, RELEASED, DIRTY, OUT_OF_SERVICE),
            DRYING, Set.of(RELEASED, DIRTY, TREATING, OUT_OF_SERVICE),
            RELEASED, Set.of(IN_USE, DIRTY, TREATING, OUT_OF_SERVICE),
            OUT_OF_SERVICE, Set.of(DIRTY));

    /** A step from one state to another. */
    record Step(KitState from, KitState to) {

        boolean allowed() {
            return ALLOWED.getOrDefault(from, Set.of()).contains(to);
        }
    }

    private static List<Step> steps(boolean allowed) {
        List<Step> steps = new ArrayList<>();
        for (KitState from : KitState.values()) {
            for (KitState to : KitState.values()) {
                Step step = new Step(from, to);
                if (step.allowed() == allowed) {
                    steps.add(step);
                }
            }
        }
        return steps;
    }

    static List<Step> allowed() {
        return steps(true);
    }

    static List<Step> forbidden() {
        return steps(false);
    }

    @ParameterizedTest
    @MethodSource("allowed")
    void anAllowedStepMayBeTaken(Step step) {
        assertThat(step.from().mayBecome(step.to())).isTrue();
    }

    @ParameterizedTest
    @MethodSource("forbidden")
    void aForbiddenStepMayNot(Step step) {
        assertThat(step.from().mayBecome(step.to())).isFalse();
    }
}
