package org.wadeplan.planner.decon;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * Works out what a clean costs.
 *
 * <p>The amount of product is that of one bath: the litres of the round's own tub for the agent; where it names none, 40 L
 * for a soak (four pairs of waders) and 2 L for a spray or wipe, both own estimates. A strength whose basis is not
 * understood counts as per cent, the largest of the usual ones, so that it never looks cheap by mistake.
 */
final class CleanPrice {

    private static final double BATH_L = 40;
    private static final double SPRAYER_L = 2;
    private static final double G_PER_L_OF_ONE_PERCENT = 10;

    private final List<DeconResource> resources;

    CleanPrice(Biosecurity biosecurity) {
        this.resources = biosecurity.resources();
    }

    CleanCost of(List<DeconStep> steps, Collection<AppliedTreatment> treatments) {
        int crewMin = CleanCost.crewMin(steps);
        return new CleanCost(
                crewMin + CleanCost.aloneMin(steps),
                crewMin,
                treatments.size(),
                roomFor(steps),
                treatments.stream()
                        .map(AppliedTreatment::recipe)
                        .mapToDouble(this::productG)
                        .sum(),
                treatments.stream()
                        .filter(treatment -> !treatment.recipe().kind().runsAlone())
                        .mapToInt(AppliedTreatment::wholeContactMin)
                        .sum());
    }

    private int roomFor(List<DeconStep> steps) {
        return resources.stream()
                .filter(resource -> steps.stream()
                        .anyMatch(step ->
                                step.resource().filter(resource.id()::equals).isPresent()))
                .mapToInt(DeconResource::capacityKitSets)
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    /** Grams of product, or of active agent where the strength is given so, for one bath. */
    double productG(Recipe recipe) {
        if (recipe.kind() != AgentKind.CHEMICAL || recipe.strength().isEmpty()) {
            return 0;
        }
        return gPerL(recipe.strength().getAsDouble(), recipe.strengthBasis().orElse("")) * litres(recipe);
    }

    private double litres(Recipe recipe) {
        OptionalDouble tub = resources.stream()
                .filter(resource ->
                        resource.agent().filter(recipe.agent()::equals).isPresent())
                .flatMapToDouble(resource -> resource.volumeL().stream())
                .findFirst();
        return tub.orElse(recipe.mode() == TreatmentMode.SOAK ? BATH_L : SPRAYER_L);
    }

    private static double gPerL(double strength, String basis) {
        String unit = basis.toLowerCase(Locale.ROOT);
        if (unit.startsWith("mg/l")) {
            return strength / 1000;
        }
        return unit.startsWith("g/l") || unit.startsWith("ml/l") ? strength : strength * G_PER_L_OF_ONE_PERCENT;
    }
}
