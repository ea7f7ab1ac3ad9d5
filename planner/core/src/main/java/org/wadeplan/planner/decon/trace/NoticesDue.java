package org.wadeplan.planner.decon.trace;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.planner.decon.trace.TraceReport.Notice;
import org.wadeplan.planner.decon.trace.TraceReport.Spread;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/**
 * Whom to tell of a find: the agency at once, and whoever gave the permits of the water and of each water that may have
 * received it. That these are told the same day is common practice; what the law asks, a person looks up.
 */
final class NoticesDue {

    private NoticesDue() {}

    static List<Notice> of(Round round, FindSpan span, List<Spread> spreads) {
        LocalDate day = span.find().seen().atZone(round.header().zone()).toLocalDate();
        List<Notice> notices = new ArrayList<>();
        String what = span.find().pest() + " in " + span.find().water();
        notices.add(new Notice(
                day,
                round.header().agency() + ", " + round.header().checkIn().contactRole(),
                what + (span.knownBefore() ? ", known there before" : ", new on record")
                        + ": where, when, by whom, with a"
                        + " sample or a photo; ask what the law wants told to whom by when"));
        Set<String> waters = new LinkedHashSet<>();
        waters.add(span.find().water());
        spreads.stream().filter(Spread::happened).map(Spread::water).forEach(waters::add);
        for (String id : waters) {
            round.water(id).ifPresent(water -> notices.addAll(permits(round, water, span, day)));
        }
        return List.copyOf(notices);
    }

    private static List<Notice> permits(Round round, Water water, FindSpan span, LocalDate day) {
        String catchment = round.terrain()
                .network()
                .line(water.stream())
                .map(StreamLine::catchment)
                .orElse(water.stream());
        String about = water.id().equals(span.find().water())
                ? span.find().pest() + " was found in " + water.name()
                : water.name() + " may have received " + span.find().pest() + " from "
                        + span.find().water();
        return round.permits().stream()
                .filter(permit -> permit.catchment().equals(catchment))
                .map(Permit::id)
                .map(permit -> new Notice(day, "whoever gave permit " + permit + " (" + catchment + ")", about))
                .toList();
    }
}
