package org.wadeplan.planner.week;

import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.planner.round.Place;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.TravelFallback;
import org.wadeplan.planner.round.TravelLeg;

/** Drives between sites and the depot: from the travel table, else estimated from the straight line and marked so. */
public final class Travel {

    /**
     * One drive.
     *
     * @param minutes with the round's arrival margin; 0 only from a place to itself
     * @param words where the figure comes from
     */
    public record Drive(int minutes, boolean estimated, String words) {}

    private final Round round;

    public Travel(Round round) {
        this.round = round;
    }

    /** Both are site codes or the depot's place; anything else is a bug. */
    public Drive between(String from, String to) {
        if (from.equals(to)) {
            return new Drive(0, false, "same place");
        }
        int marginMin = round.header().duty().arrivalMarginMin();
        Optional<TravelLeg> leg = round.leg(from, to).filter(found -> found.minutes() > 0);
        return leg.map(found -> new Drive(found.minutes() + marginMin, false, found.source()))
                .orElseGet(() -> estimate(from, to, marginMin));
    }

    private Drive estimate(String from, String to, int marginMin) {
        TravelFallback rule = round.header().travelFallback();
        double straightM = at(from).distanceM(at(to));
        double rawMin = straightM * rule.factor() / 1000 / rule.speedKmH() * 60;
        int step = Math.max(1, rule.roundUpMin());
        int minutes = Math.max(step, (int) Math.ceil(rawMin / step - 1e-9) * step);
        String words = String.format(
                Locale.ROOT,
                "%s to %s: %d min estimated, not in the travel table (straight line %.1f km x %s at %s km/h, rounded up to %d min)",
                from,
                to,
                minutes,
                straightM / 1000,
                rule.factor(),
                rule.speedKmH(),
                step);
        return new Drive(minutes + marginMin, true, words);
    }

    private MetricPoint at(String place) {
        Place depot = round.header().depot();
        if (depot.id().equals(place)) {
            return depot.at();
        }
        return round.site(place)
                .map(Site::start)
                .orElseThrow(() -> new IllegalArgumentException("Neither a site nor the depot: " + place));
    }
}
