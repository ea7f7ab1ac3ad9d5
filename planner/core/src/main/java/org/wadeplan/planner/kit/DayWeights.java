package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a crew-day's load weighs: on the vehicle, and on each walk from it to the water.
 *
 * @param payloadKg what the vehicle may carry, people and gear; empty where the store does not say
 * @param peopleKg the people, at {@link WeightCheck#PERSON_KG} each
 * @param gear everything that travels
 */
public record DayWeights(
        String crew,
        LocalDate date,
        String vehicle,
        OptionalDouble payloadKg,
        double peopleKg,
        Weighed gear,
        List<Walk> walks) {

    /**
     * The sum of what was weighed.
     *
     * @param notWeighed kinds whose mass the store does not hold: the true figure is higher
     */
    public record Weighed(double kg, List<String> notWeighed) {}

    /**
     * From the vehicle to the water, all gear of the visit shared evenly.
     *
     * @param walkInM one way; empty where the site does not say
     */
    public record Walk(String site, OptionalDouble walkInM, int people, Weighed gear) {

        public double perPersonKg() {
            return people == 0 ? gear.kg() : gear.kg() / people;
        }

        /** Whether the share is more than the guideline figure, or the walk longer than it speaks of, with weight to carry. */
        public boolean heavy() {
            return perPersonKg() > WeightCheck.LOOK_CLOSER_KG;
        }
    }

    /** What it all comes to, kilograms; the true figure is higher where something was not weighed. */
    public double totalKg() {
        return peopleKg + gear.kg();
    }

    /** True where what was weighed alone is more than the vehicle may carry. */
    public boolean overPayload() {
        return payloadKg.isPresent() && totalKg() > payloadKg.getAsDouble() + 1e-9;
    }
}
