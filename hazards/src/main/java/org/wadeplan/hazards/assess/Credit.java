package org.wadeplan.hazards.assess;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.wadeplan.hazards.register.Control;
import org.wadeplan.hazards.register.ControlLevel;

/**
 * What controls may earn. A level earns its steps once however many controls it has, and only where the hazard has a
 * control of that level; controls make harm rarer, never smaller. All of this is a local setting.
 */
final class Credit {

    private static final Set<ControlLevel> DONE_ON_THE_DAY =
            EnumSet.of(ControlLevel.ENGINEER, ControlLevel.ADMINISTER, ControlLevel.PPE);

    private Credit() {}

    static RiskScore residual(RiskScore inherent, List<Control> controls, Set<ControlLevel> inPlace) {
        int steps = levels(controls).stream()
                .filter(inPlace::contains)
                .mapToInt(ControlLevel::creditSteps)
                .sum();
        return inherent.likelier(-steps);
    }

    static RiskScore ifDone(RiskScore inherent, List<Control> controls) {
        return residual(inherent, controls, DONE_ON_THE_DAY);
    }

    /** True where nothing stands between people and the hazard but rules and what they wear. */
    static boolean leansOnPeople(List<Control> controls, Set<ControlLevel> inPlace) {
        return levels(controls).stream()
                .noneMatch(level -> level.compareTo(ControlLevel.ADMINISTER) < 0 && inPlace.contains(level));
    }

    private static Set<ControlLevel> levels(List<Control> controls) {
        Set<ControlLevel> levels = EnumSet.noneOf(ControlLevel.class);
        controls.forEach(control -> levels.add(control.level()));
        return levels;
    }
}
