package org.wadeplan.planner.pack.calendar;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Clazz;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/**
 * Visits and cleanings as iCalendar (RFC 5545), all CONFIDENTIAL, without places: no coordinates, no site codes.
 *
 * <p>The id of an event stays the same from plan to plan, so that importing a newer plan moves events.
 */
public final class WeekCalendar {

    private final Round round;
    private final RoundPlan plan;
    private final Instant madeAt;

    private WeekCalendar(Round round, RoundPlan plan, Instant madeAt) {
        this.round = round;
        this.plan = plan;
        this.madeAt = madeAt;
    }

    /** The whole file: UTF-8, lines folded at 75 octets and ended by CR LF. */
    public static byte[] of(Round round, RoundPlan plan, Instant madeAt) {
        return new WeekCalendar(round, plan, madeAt).bytes();
    }

    private byte[] bytes() {
        List<Entry> entries = new ArrayList<>(visits());
        entries.addAll(cleanings());
        List<CalendarComponent> components = new ArrayList<>();
        components.add(ZoneComponent.of(
                round.header().zone(),
                entries.stream()
                        .map(Entry::start)
                        .min(Comparator.naturalOrder())
                        .orElse(madeAt),
                entries.stream().map(Entry::end).max(Comparator.naturalOrder()).orElse(madeAt)));
        entries.forEach(entry -> components.add(event(entry)));
        PropertyList head = new PropertyList(List.of(
                new ProdId("-//Wadeplan//Wadeplan//EN"), ImmutableVersion.VERSION_2_0, ImmutableCalScale.GREGORIAN));
        return text(new net.fortuna.ical4j.model.Calendar(head, new ComponentList<>(List.copyOf(components))));
    }

    private static byte[] text(net.fortuna.ical4j.model.Calendar calendar) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            new CalendarOutputter().output(calendar, out);
            return out.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What becomes an event. */
    private record Entry(String uid, String summary, Instant start, Instant end, boolean authorised) {}

    private List<Entry> visits() {
        List<Entry> entries = new ArrayList<>();
        for (CrewDay day : plan.week().crewDays()) {
            for (Activity visit : day.visits()) {
                visit.site().ifPresent(site -> entries.add(visit(day, visit, site)));
            }
        }
        return entries;
    }

    private Entry visit(CrewDay day, Activity visit, String site) {
        String part = visit.part().map(VisitPart::word).orElse("visit");
        boolean authorised = plan.permissions().stream()
                .filter(permission ->
                        permission.site().equals(site) && permission.date().equals(day.date()))
                .findFirst()
                .map(Permission::authorised)
                .orElse(false);
        String summary = Character.toUpperCase(part.charAt(0)) + part.substring(1) + " " + day.crew() + " – "
                + round.site(site).map(Site::stream).orElse("?");
        return new Entry(
                id(site + "-" + part),
                authorised ? summary : summary + " – NOT AUTHORISED",
                visit.start(),
                visit.end(),
                authorised);
    }

    /** Numbered for each kit set by start, because a kit set is cleaned more than once in a week. */
    private List<Entry> cleanings() {
        Map<String, Integer> count = new TreeMap<>();
        List<Entry> entries = new ArrayList<>();
        for (DeconTask task : plan.week().decon()) {
            int number = count.merge(task.kitSet(), 1, Integer::sum);
            entries.add(new Entry(
                    id("clean-" + task.kitSet() + "-" + number),
                    "Clean " + task.kitSet() + " – " + task.crew(),
                    task.start(),
                    task.crewFree(),
                    true));
        }
        return entries;
    }

    /** The same for the same visit in every plan, and telling nothing of the site. */
    private String id(String what) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest((round.header().id() + "/" + what).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, 32) + "@wadeplan";
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("Every Java has SHA-256", missing);
        }
    }

    private VEvent event(Entry entry) {
        ZoneId zone = round.header().zone();
        return new VEvent(new PropertyList(List.of(
                new Uid(entry.uid()),
                new DtStamp(madeAt),
                new Sequence(0),
                new DtStart<>(entry.start().atZone(zone)),
                new DtEnd<>(entry.end().atZone(zone)),
                new Summary(entry.summary()),
                new Description("Plan " + plan.version().label() + ". Papers and places are in the printed pack."),
                new Status(entry.authorised() ? Status.VALUE_CONFIRMED : Status.VALUE_TENTATIVE),
                new Clazz(Clazz.VALUE_CONFIDENTIAL))));
    }
}
