package org.wadeplan.hazards.register;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One row of the register.
 *
 * @param id stable: {@code E01}
 * @param version version of the row
 * @param title what it is
 * @param trigger when it applies
 * @param raisedBy conditions that each make it one step likelier where they hold
 * @param consequence worst credible harm: 1 first aid at most, 2 minor, 3 medical treatment, 4 lasting harm, 5 death
 * @param likelihood chance a visit before controls: 1 rare (one in 100 000) to 5 almost certain (one in 10)
 * @param controls best level first, at least one
 * @param stops when work stops
 * @param askOnSite question to ask before going in
 * @param sign warning sign
 * @param source where the row comes from
 */
public record Hazard(
        String id,
        String version,
        String title,
        Trigger trigger,
        List<Condition> raisedBy,
        int consequence,
        int likelihood,
        List<Control> controls,
        List<StopRule> stops,
        Optional<String> askOnSite,
        Sign sign,
        String source) {

    private static final Comparator<Control> BEST_FIRST = Comparator.comparing(Control::level);

    public Hazard {
        controls = controls.stream().sorted(BEST_FIRST).toList();
        raisedBy = List.copyOf(raisedBy);
        stops = List.copyOf(stops);
    }
}
