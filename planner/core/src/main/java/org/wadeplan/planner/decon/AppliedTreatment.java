package org.wadeplan.planner.decon;

/**
 * A recipe as it will be applied: with the longest contact and drying that the pairs it must cover ask for.
 *
 * @param contactMin minutes of contact, all surfaces wet
 * @param dryingH hours of drying after that, from dry to the touch
 */
public record AppliedTreatment(Recipe recipe, double contactMin, double dryingH, boolean pickFirst) {

    static AppliedTreatment of(Evidence evidence) {
        return new AppliedTreatment(evidence.recipe(), evidence.contactMin(), evidence.dryingH(), evidence.pickFirst());
    }

    /** The least application that does for both. */
    AppliedTreatment raisedTo(Evidence evidence) {
        return new AppliedTreatment(
                recipe,
                Math.max(contactMin, evidence.contactMin()),
                Math.max(dryingH, evidence.dryingH()),
                pickFirst || evidence.pickFirst());
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
