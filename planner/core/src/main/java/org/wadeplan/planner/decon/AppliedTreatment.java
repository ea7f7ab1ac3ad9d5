package org.wadeplan.planner.decon;

import java.util.List;

/**
 * A recipe as it will be applied: with the longest contact and drying that the pairs it must cover ask for.
 *
 * @param contactMin minutes of contact, all surfaces wet
 * @param dryingH hours of drying after that, from dry to the touch
 * @param notFor kinds of items of the kit set that it would harm, so that it must not be used on them
 */
public record AppliedTreatment(
        Recipe recipe, double contactMin, double dryingH, boolean pickFirst, List<String> notFor) {

    /** For every item of the kit set. */
    public AppliedTreatment(Recipe recipe, double contactMin, double dryingH, boolean pickFirst) {
        this(recipe, contactMin, dryingH, pickFirst, List.of());
    }

    static AppliedTreatment of(Evidence evidence) {
        return new AppliedTreatment(evidence.recipe(), evidence.contactMin(), evidence.dryingH(), evidence.pickFirst());
    }

    /** The least application that does for both. */
    AppliedTreatment raisedTo(Evidence evidence) {
        return new AppliedTreatment(
                recipe,
                Math.max(contactMin, evidence.contactMin()),
                Math.max(dryingH, evidence.dryingH()),
                pickFirst || evidence.pickFirst(),
                notFor);
    }

    AppliedTreatment keptOff(List<String> kinds) {
        return new AppliedTreatment(recipe, contactMin, dryingH, pickFirst, List.copyOf(kinds));
    }

    /** {@code "; NOT for: meter"} for the label of its step; empty where every item bears it. */
    String notForWords() {
        return notFor.isEmpty() ? "" : "; NOT for: " + String.join(", ", notFor);
    }

    boolean does(Evidence evidence) {
        return recipe.equals(evidence.recipe())
                && contactMin >= evidence.contactMin()
                && dryingH >= evidence.dryingH()
                && (pickFirst || !evidence.pickFirst());
    }

    /** Whole minutes, rounded up. */
    int wholeContactMin() {
        return (int) Math.ceil(contactMin);
    }
}
