package org.wadeplan.hazards.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.hazards.limits.PlainNumber;
import org.wadeplan.hazards.limits.WadingLimit;
import org.wadeplan.hazards.limits.WadingLimit.Cap;
import org.wadeplan.hazards.limits.WadingLimit.Water;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.Hazard;
import org.wadeplan.hazards.register.StopRule;

/** Holds stop rules and the caps on wading against what is planned. */
final class StopLimits {

    static final String WADING = "WADING";

    private final Exposure exposure;

    StopLimits(Exposure exposure) {
        this.exposure = exposure;
    }

    /** Breached ones first; otherwise wading, then the hazards in the order given. */
    List<StopLimit> of(List<Hazard> applying) {
        List<StopLimit> all = new ArrayList<>(wading());
        applying.forEach(hazard -> hazard.stops().forEach(rule -> all.add(of(hazard.id(), rule))));
        return all.stream()
                .sorted(Comparator.comparing(StopLimit::breached).reversed())
                .toList();
    }

    private List<StopLimit> wading() {
        if (!exposure.activities().contains(Activity.WADING)) {
            return List.of();
        }
        WadingTeam team = exposure.waders();
        Water water = new Water(
                planned(Attribute.DEPTH_M), planned(Attribute.VELOCITY_MS), planned(Attribute.DEPTH_VELOCITY_M2S));
        return WadingLimit.caps(team.profile(), team.smallest(), team.footing(), water).stream()
                .map(StopLimits::wading)
                .toList();
    }

    private static StopLimit wading(Cap cap) {
        String measure = cap.measure().words();
        String beyond = cap.edgeAllowed() ? " over " : " at or over ";
        return new StopLimit(
                WADING,
                "Stay out at " + measure + beyond + PlainNumber.of(cap.limit()) + " "
                        + cap.measure().unit() + " (" + cap.name() + ").",
                Optional.of(measure),
                OptionalDouble.of(cap.limit()),
                cap.measure().unit(),
                cap.found(),
                state(cap.found(), cap.bites()),
                cap.source());
    }

    private StopLimit of(String hazardId, StopRule rule) {
        return rule.limit()
                .map(limit -> measured(hazardId, rule, limit))
                .orElseGet(() -> new StopLimit(
                        hazardId,
                        rule.say(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        "",
                        OptionalDouble.empty(),
                        StopState.WATCH,
                        rule.source()));
    }

    private StopLimit measured(String hazardId, StopRule rule, StopRule.Limit limit) {
        Attribute attribute = limit.attribute();
        OptionalDouble planned = planned(attribute);
        boolean breached = planned.isPresent() && limit.breachedWhen().holds(planned.getAsDouble(), limit.value());
        StopState state = planned.isEmpty() && notExpected(attribute) ? StopState.WATCH : state(planned, breached);
        return new StopLimit(
                hazardId,
                rule.say(),
                Optional.of(attribute.words()),
                OptionalDouble.of(limit.value()),
                attribute.unit(),
                planned,
                state,
                rule.source());
    }

    private boolean notExpected(Attribute attribute) {
        return attribute.seenOnSiteOnly() || exposure.conditions().reading(attribute) instanceof Reading.DoesNotArise;
    }

    private OptionalDouble planned(Attribute attribute) {
        return exposure.conditions().reading(attribute).value();
    }

    private static StopState state(OptionalDouble planned, boolean breached) {
        if (planned.isEmpty()) {
            return StopState.NOT_KNOWN;
        }
        return breached ? StopState.BREACHED : StopState.NOT_REACHED;
    }
}
