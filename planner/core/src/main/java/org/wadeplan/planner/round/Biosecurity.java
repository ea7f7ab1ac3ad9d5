package org.wadeplan.planner.round;

import java.util.List;
import java.util.Optional;

/**
 * Pests, where they are, and what is known to work against them.
 *
 * @param gear what kinds of gear bear
 * @param rules of every place and time; {@link Validity} says which count
 * @param jurisdiction the place whose rules the round follows; empty: none named
 */
public record Biosecurity(
        List<Pest> pests,
        List<WaterPest> waterPests,
        List<Treatment> treatments,
        List<DeconStepRule> steps,
        List<DeconResource> resources,
        List<GearClass> gear,
        List<DeconRule> rules,
        Optional<String> jurisdiction) {

    /** Without gear classes and rules of place. */
    public Biosecurity(
            List<Pest> pests,
            List<WaterPest> waterPests,
            List<Treatment> treatments,
            List<DeconStepRule> steps,
            List<DeconResource> resources) {
        this(pests, waterPests, treatments, steps, resources, List.of(), List.of(), Optional.empty());
    }
}
