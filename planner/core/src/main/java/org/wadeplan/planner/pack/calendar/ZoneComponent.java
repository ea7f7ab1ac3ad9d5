package org.wadeplan.planner.pack.calendar;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.Daylight;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzName;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;

/**
 * A zone as RFC 5545 wants it beside the events that name it: the changes of the clock from the last one before the first
 * event to the first one after the last event, from Java's own rules. Nothing is looked up on a network.
 */
final class ZoneComponent {

    private ZoneComponent() {}

    static VTimeZone of(ZoneId zone, Instant first, Instant last) {
        ZoneRules rules = zone.getRules();
        List<Observance> observances = new ArrayList<>();
        ZoneOffsetTransition change = rules.previousTransition(first);
        if (change == null) {
            ZoneOffset offset = rules.getOffset(first);
            observances.add(observance(LocalDateTime.of(1970, 1, 1, 0, 0), offset, offset, false));
            change = rules.nextTransition(first);
        }
        while (change != null) {
            boolean summer = rules.isDaylightSavings(change.getInstant());
            observances.add(
                    observance(change.getDateTimeBefore(), change.getOffsetBefore(), change.getOffsetAfter(), summer));
            change = change.getInstant().isAfter(last) ? null : rules.nextTransition(change.getInstant());
        }
        return new VTimeZone(
                new PropertyList(List.of(new TzId(zone.getId()))), new ComponentList<>(List.copyOf(observances)));
    }

    private static Observance observance(LocalDateTime start, ZoneOffset from, ZoneOffset to, boolean summer) {
        List<Property> facts =
                List.of(new DtStart<>(start), new TzOffsetFrom(from), new TzOffsetTo(to), new TzName("UTC" + name(to)));
        PropertyList properties = new PropertyList(facts);
        return summer ? new Daylight(properties) : new Standard(properties);
    }

    private static String name(ZoneOffset offset) {
        return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
    }
}
