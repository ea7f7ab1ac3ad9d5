package org.wadeplan.planner.round;

import java.util.List;

/** Pests, where they are, and what is known to work against them. */
public record Biosecurity(
        List<Pest> pests,
        List<WaterPest> waterPests,
        List<Treatment> treatments,
        List<DeconStepRule> steps,
        List<DeconResource> resources) {}
