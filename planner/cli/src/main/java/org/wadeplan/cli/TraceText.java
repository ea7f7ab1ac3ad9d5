package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.trace.Find;
import org.wadeplan.planner.decon.trace.FindSpan;
import org.wadeplan.planner.decon.trace.TraceClock;
import org.wadeplan.planner.decon.trace.TraceReport;
import org.wadeplan.planner.decon.trace.TraceReport.ChangedLeg;
import org.wadeplan.planner.decon.trace.TraceReport.ExposedKit;
import org.wadeplan.planner.decon.trace.TraceReport.OtherWater;
import org.wadeplan.planner.decon.trace.TraceReport.Stay;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/** A trace as lines of text, in the order in which people need it: what to do with the kit first. */
final class TraceText {

    private final Round round;
    private final TraceClock clock;

    TraceText(Round round) {
        this.round = round;
        this.clock = new TraceClock(round.header().zone());
    }

    List<String> lines(TraceReport report, String week) {
        List<String> text = new ArrayList<>();
        Find find = report.span().find();
        text.addAll(TextTable.hanging(
                "",
                "Found: " + pest(find.pest()) + " in " + water(find.water())
                        + find.site().map(site -> ", at " + site).orElse("") + ", seen " + clock.at(find.seen())
                        + find.note().map(note -> " (" + note + ")").orElse("")));
        text.addAll(TextTable.hanging("", status(report.span())));
        text.addAll(TextTable.hanging(
                "", "By " + week + "; times in " + round.header().zone() + "."));
        kit(text, report.exposed());
        items(text, report.exposed());
        legs(text, report);
        waters(text, report);
        notices(text, report);
        text.add("");
        text.addAll(TextTable.hanging(
                "",
                "This is what the files and the plan say. It rules a carry out only as far as they are true and complete,"
                        + " and clears no gear: a person looks, treats and signs."));
        return text;
    }

    private String status(FindSpan span) {
        Find find = span.find();
        String until = span.lastClear()
                .map(day -> "suspected back to " + day + ", when it was last looked for and not found")
                .orElse("suspected as far back as the ledger goes: no visit on file looked for it and found none");
        return (span.knownBefore() ? "It was known there before. " : "New to " + find.water() + ". ") + "In "
                + find.water() + " it counts as known from the sighting and " + until + ".";
    }

    private void kit(List<String> text, List<ExposedKit> exposed) {
        text.add("");
        text.add("Kit sets that were or will be there");
        for (ExposedKit kit : exposed) {
            if (!kit.item()) {
                text.addAll(TextTable.hanging("  ", kit.id() + stays(kit)));
                text.addAll(TextTable.hanging("    came: ", kit.arrived()));
                text.addAll(TextTable.hanging("    now:  ", kit.now()));
            }
        }
    }

    /** Items that were at the same visits and need the same are named together. */
    private void items(List<String> text, List<ExposedKit> exposed) {
        Map<List<String>, List<String>> groups = new LinkedHashMap<>();
        for (ExposedKit kit : exposed) {
            if (kit.item()) {
                groups.computeIfAbsent(List.of(stays(kit), kit.now()), key -> new ArrayList<>())
                        .add(kit.id() + " (" + kit.label() + ")");
            }
        }
        if (groups.isEmpty()) {
            return;
        }
        text.add("");
        text.add("Items outside kit sets that were or will be there");
        groups.forEach((what, items) -> {
            text.addAll(TextTable.hanging("  ", String.join(", ", items) + what.get(0)));
            text.addAll(TextTable.hanging("    now:  ", what.get(1)));
        });
    }

    private String stays(ExposedKit kit) {
        return ": before the sighting " + stays(kit.before()) + "; after it " + stays(kit.after());
    }

    private String stays(List<Stay> stays) {
        return stays.isEmpty()
                ? "none"
                : stays.stream()
                        .map(stay -> stay.where() + " " + clock.at(stay.from()) + "-" + clock.time(stay.until()))
                        .collect(Collectors.joining(", "));
    }

    private void legs(List<String> text, TraceReport report) {
        text.add("");
        text.add("Cleanings that change: " + report.legs().size() + "; later ones that stay as they are: "
                + report.unchangedLegs());
        for (ChangedLeg leg : report.legs()) {
            text.addAll(TextTable.hanging(
                    "  ",
                    leg.kitSet() + ", crew " + leg.crew() + ", " + clock.at(leg.start()) + ": " + leg.minutesBefore()
                            + " -> " + leg.minutesAfter() + " min, people free at " + clock.time(leg.crewFree())
                            + ", released " + clock.at(leg.released()) + (leg.stands() ? "" : " - DOES NOT STAND")));
            text.addAll(TextTable.hanging("    before: ", leg.stepsBefore()));
            text.addAll(TextTable.hanging("    now:    ", leg.stepsAfter()));
            text.addAll(TextTable.hanging("    next use of the set: ", leg.use().orElse("none this week")));
            leg.departure().ifPresent(words -> text.addAll(TextTable.hanging("    the crew ", words)));
            text.addAll(TextTable.hanging(
                    "    the day ends at ",
                    clock.time(leg.dayEnd())
                            + leg.rest().map(rest -> "; rest " + rest).orElse("")));
        }
        if (report.broken().isEmpty()) {
            text.add("  No later leg was found to break.");
        } else {
            text.add("  What no longer holds stands at the end, with what to do.");
        }
    }

    private void waters(List<String> text, TraceReport report) {
        text.add("");
        text.add("Other waters");
        for (OtherWater water : report.otherWaters()) {
            text.addAll(TextTable.hanging("  ", water.water() + " (" + water.name() + ") " + verdict(water)));
            water.because().forEach(reason -> text.addAll(TextTable.hanging("    - ", reason)));
        }
    }

    private static String verdict(OtherWater water) {
        if (water.clear()) {
            return water.broughtNothing() && water.receivedNothing()
                    ? "is clear because:"
                    : "is clear as far as kit sets go, because:";
        }
        return water.receivedNothing() ? "may be where it came from:" : "MAY RECEIVE IT:";
    }

    private static void notices(List<String> text, TraceReport report) {
        text.add("");
        text.add("Tell (the same day is common practice; the law may ask for more, and sooner)");
        report.notices()
                .forEach(notice -> text.addAll(
                        TextTable.hanging("  by " + notice.by() + "  ", notice.whom() + ": " + notice.about())));
    }

    private String pest(String id) {
        return round.biosecurity().pests().stream()
                .filter(pest -> pest.id().equals(id))
                .map(Pest::name)
                .map(name -> id + " " + name)
                .findFirst()
                .orElse(id);
    }

    private String water(String id) {
        return round.water(id).map(Water::name).map(name -> id + " " + name).orElse(id);
    }
}
