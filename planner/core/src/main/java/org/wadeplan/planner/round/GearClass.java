package org.wadeplan.planner.round;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a kind of gear is made of and what it bears.
 *
 * @param id word that {@code store.csv} names in {@code gear_class}
 * @param material how it takes up water, which decides the rows of evidence that speak of it
 * @param maxTempC hottest bath that does not harm it, degrees C; empty: not known
 * @param harmedBy agents, as the treatments name them, that harm it at the strengths in use
 * @param freezing false where frost harms it
 * @param waterG water that one item of it holds when wet and drained, grams; empty: not known
 * @param areaM2 surface from which that water dries, square metres
 * @param dryingFactor how many times longer than a bare net it dries for the same water and surface
 */
public record GearClass(
        String id,
        String label,
        Material material,
        Immersion immersion,
        OptionalDouble maxTempC,
        Set<String> harmedBy,
        boolean freezing,
        OptionalDouble waterG,
        OptionalDouble areaM2,
        OptionalDouble dryingFactor,
        Optional<String> note,
        String source) {}
