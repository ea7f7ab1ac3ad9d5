package org.wadeplan.hazards.assess;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.ControlLevel;

/**
 * What people will be exposed to on one visit. It knows no method and no round.
 *
 * @param site site code
 * @param date day of the visit
 * @param activities what people will do
 * @param conditions what is known of water, weather and site
 * @param noted what people saw at this site
 * @param controlsInPlace what has been said to be in place today; nothing is assumed
 * @param waders the weakest of those who wade
 */
public record Exposure(
        String site,
        LocalDate date,
        Set<Activity> activities,
        Conditions conditions,
        List<SiteHazard> noted,
        List<ControlInPlace> controlsInPlace,
        WadingTeam waders) {

    public Exposure {
        Set<Activity> ordered = EnumSet.noneOf(Activity.class);
        ordered.addAll(activities);
        activities = Collections.unmodifiableSet(ordered);
        noted = List.copyOf(noted);
        controlsInPlace = List.copyOf(controlsInPlace);
    }

    /** A visit of which nothing is known yet. */
    public static Exposure at(String site, LocalDate date) {
        return new Exposure(site, date, Set.of(), Conditions.unknown(), List.of(), List.of(), WadingTeam.unknown());
    }

    public Exposure doing(Activity... more) {
        Set<Activity> all = EnumSet.noneOf(Activity.class);
        all.addAll(activities);
        Collections.addAll(all, more);
        return new Exposure(site, date, all, conditions, noted, controlsInPlace, waders);
    }

    public Exposure measured(Attribute attribute, double number) {
        return in(conditions.with(attribute, number));
    }

    public Exposure present(String feature) {
        return in(conditions.with(feature, true));
    }

    /** Someone looked, and it is not there. */
    public Exposure absent(String feature) {
        return in(conditions.with(feature, false));
    }

    public Exposure in(Conditions known) {
        return new Exposure(site, date, activities, known, noted, controlsInPlace, waders);
    }

    public Exposure noted(SiteHazard seen) {
        List<SiteHazard> all = new ArrayList<>(noted);
        all.add(seen);
        return new Exposure(site, date, activities, conditions, all, controlsInPlace, waders);
    }

    public Exposure controlled(String hazardId, ControlLevel level) {
        List<ControlInPlace> all = new ArrayList<>(controlsInPlace);
        all.add(new ControlInPlace(hazardId, level));
        return new Exposure(site, date, activities, conditions, noted, all, waders);
    }

    public Exposure waded(WadingTeam team) {
        return new Exposure(site, date, activities, conditions, noted, controlsInPlace, team);
    }
}
