package org.wadeplan.planner.permission;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.round.Permit.TakeCap;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Reads the permits of a site's catchment. Where several cover the method, the one that stands in the way least counts. */
final class PermitCheck {

    /** At this share of a take cap a crew stops and asks, per cent. Common practice; no authority's figure. */
    static final int CAP_WARNING_PCT = 80;

    private PermitCheck() {}

    static Findings of(Round round, Site site, String method, LocalDate date) {
        String catchment = round.terrain()
                .network()
                .line(site.stream())
                .map(StreamLine::catchment)
                .orElse(site.stream());
        List<Permit> here = round.permits().stream()
                .filter(permit -> permit.catchment().equals(catchment))
                .toList();
        List<Findings> covering = here.stream()
                .filter(permit -> covers(permit, method))
                .map(permit -> read(permit, date))
                .toList();
        return covering.stream()
                .min(Comparator.comparingInt(Findings::severity))
                .orElseGet(() -> none(here, catchment, method));
    }

    /** {@code all} covers everything; a permit for EFISH covers EFISH_AM, which is the same method in cooler hours. */
    static boolean covers(Permit permit, String method) {
        return permit.methods().stream()
                .anyMatch(listed -> listed.equals(method)
                        || listed.toLowerCase(Locale.ROOT).equals("all")
                        || (listed.equals("EFISH") && method.equals("EFISH_AM")));
    }

    private static Findings none(List<Permit> here, String catchment, String method) {
        Findings findings = new Findings();
        String held = here.isEmpty()
                ? "there is no permit for this catchment"
                : "held: "
                        + String.join(
                                "; ",
                                here.stream()
                                        .map(permit -> permit.id() + " for " + String.join(", ", permit.methods()))
                                        .toList());
        findings.blocks().add("No permit covers " + method + " in catchment " + catchment + ": " + held + ".");
        return findings;
    }

    private static Findings read(Permit permit, LocalDate date) {
        Findings findings = new Findings();
        switch (permit.status()) {
            case GRANTED -> {}
            case PENDING -> findings.awaiting().add("Permit " + permit.id() + " is pending.");
            case REFUSED -> findings.blocks().add("Permit " + permit.id() + " was refused.");
        }
        if (date.isBefore(permit.validFrom()) || date.isAfter(permit.validUntil())) {
            findings.blocks()
                    .add("Permit " + permit.id() + " runs from " + permit.validFrom() + " to " + permit.validUntil()
                            + ", not on " + date + ".");
        }
        readClosedSeason(permit, date, findings);
        permit.notifyWorkingDays().ifPresent(days -> readNotice(permit, days, date, findings));
        permit.takeCap().ifPresent(cap -> readCap(permit, cap, findings));
        permit.note().ifPresent(note -> findings.conditions().add("Permit " + permit.id() + ": " + note));
        return findings;
    }

    private static void readClosedSeason(Permit permit, LocalDate date, Findings findings) {
        if (permit.closedFrom().isEmpty() && permit.closedUntil().isEmpty()) {
            return;
        }
        LocalDate from = permit.closedFrom().orElse(permit.validFrom());
        LocalDate until = permit.closedUntil().orElse(permit.validUntil());
        if (!date.isBefore(from) && !date.isAfter(until)) {
            findings.blocks()
                    .add("Closed season of permit " + permit.id() + " from " + from + " to " + until
                            + permit.closureReason()
                                    .map(reason -> " (" + reason + ")")
                                    .orElse("") + ".");
        }
    }

    private static void readNotice(Permit permit, int days, LocalDate date, Findings findings) {
        LocalDate latest = WorkingDays.latestNotice(date, days);
        if (permit.notifiedOn().isEmpty()) {
            findings.awaiting()
                    .add("Permit " + permit.id() + " asks for notice " + days + " clear working days before: by "
                            + latest + " for a visit on " + date
                            + " (public holidays not known). No notice is on record.");
            return;
        }
        LocalDate given = permit.notifiedOn().get();
        if (given.isAfter(latest)) {
            findings.blocks()
                    .add("Notice under permit " + permit.id() + " was given on " + given + ", after " + latest
                            + ", the latest for " + date + ". Earliest lawful day: "
                            + WorkingDays.earliestVisit(given, days) + " (public holidays not known).");
        } else {
            findings.conditions()
                    .add("Notice under permit " + permit.id() + " was given on " + given + " (latest " + latest + ").");
        }
    }

    private static void readCap(Permit permit, TakeCap cap, Findings findings) {
        int askAt = cap.cap() * CAP_WARNING_PCT / 100;
        String state = cap.species() + " handled this year: " + cap.used() + " of " + cap.cap() + " (permit "
                + permit.id() + ")";
        if (cap.used() >= cap.cap()) {
            findings.blocks().add(state + ": the cap is used up.");
        } else if (cap.used() >= askAt) {
            findings.conditions().add(state + ": past " + CAP_WARNING_PCT + " %; ask before handling more.");
        } else {
            findings.conditions().add(state + ": stop and ask at " + askAt + ".");
        }
    }
}
