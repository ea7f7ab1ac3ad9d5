package org.wadeplan.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;
import org.wadeplan.planner.week.CrewDay;

/**
 * What one crew needs of one kind on one day, all its visits together.
 *
 * @param reusable true for things that come back; false for what is used up
 * @param spare carried on top where there is some
 * @param certificates every certificate that must be valid on the day
 */
record DayNeed(
        CrewDay crewDay,
        String kind,
        boolean reusable,
        double quantity,
        double spare,
        String container,
        boolean clean,
        Set<String> certificates,
        List<String> sites) {

    /** Both together, with a rule for the quantities. Whatever either asks of an item, all must fulfil. */
    DayNeed and(DayNeed other, DoubleBinaryOperator rule) {
        Set<String> both = new TreeSet<>(certificates);
        both.addAll(other.certificates());
        List<String> all = new ArrayList<>(sites);
        other.sites().stream().filter(site -> !all.contains(site)).forEach(all::add);
        return new DayNeed(
                crewDay,
                kind,
                reusable,
                rule.applyAsDouble(quantity, other.quantity()),
                Math.max(spare, other.spare()),
                container,
                clean || other.clean(),
                both,
                List.copyOf(all));
    }

    /** Two visits of one day: the most that either asks of what comes back, the sum of what is used up. */
    DayNeed andNextVisit(DayNeed other) {
        return and(other, reusable ? Math::max : Double::sum);
    }

    int units() {
        return (int) Math.ceil(quantity);
    }

    int spareUnits() {
        return (int) Math.ceil(spare);
    }
}
