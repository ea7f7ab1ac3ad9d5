package org.wadeplan.planner.kit.wayout;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/** Ways out where a crew-day's vehicle may not be on the road: another one, that one renewed, a hired one. */
final class VehicleWays {

    /** Mats, wheels and tray cleaned between two crews, minutes (invented default). */
    static final int MATS_MIN = 20;

    private final Replan replan;
    private final Round round;
    private final ZoneId zone;

    VehicleWays(Replan replan) {
        this.replan = replan;
        this.round = replan.round();
        this.zone = round.header().zone();
    }

    List<Change> of(Shortage shortage) {
        List<Change> changes = new ArrayList<>();
        for (CrewDay day : replan.before().week().crewDays()) {
            if (day.date().equals(shortage.date()) && shortage.crews().contains(day.crew())) {
                round.store().ofKind("vehicle").stream()
                        .filter(item -> !item.id().equals(day.vehicle()) && item.state() != StoreState.OUT_OF_SERVICE)
                        .flatMap(item -> other(day, item).stream())
                        .forEach(changes::add);
                changes.addAll(renewed(day));
                changes.add(hired(day));
            }
        }
        return changes;
    }

    private Optional<Change> other(CrewDay day, StoreItem item) {
        Optional<CrewDay> before = replan.before().week().crewDays().stream()
                .filter(one -> one.vehicle().equals(item.id()) && one.date().equals(day.date()))
                .max(Comparator.comparing(CrewDay::start));
        Optional<Instant> back = before.map(VehicleWays::back);
        Instant out = firstDrive(day);
        boolean inTime = back.map(
                        time -> !time.plus(Duration.ofMinutes(MATS_MIN)).isAfter(out))
                .orElse(true);
        return roster(day)
                .filter(line -> inTime)
                .map(line -> new Change(
                        WayCost.NONE,
                        "take " + item.id()
                                + back.map(time -> back(time, before.get(), out))
                                        .orElse(", which is free that day"),
                        Rosters.withVehicle(round, line, item.id()),
                        replan.tasks()));
    }

    private String back(Instant back, CrewDay before, Instant out) {
        Instant clean = back.plus(Duration.ofMinutes(MATS_MIN));
        return ": back from crew " + before.crew() + " at " + KitWords.clock(back, zone)
                + ", mats and wheels cleaned by "
                + KitWords.clock(clean, zone) + " (" + MATS_MIN + " min), drives off at " + KitWords.clock(out, zone)
                + " with " + Duration.between(clean, out).toMinutes() + " min to spare";
    }

    private static Instant back(CrewDay day) {
        return drives(day).stream()
                .map(Activity::end)
                .max(Comparator.naturalOrder())
                .orElseGet(day::end);
    }

    private static Instant firstDrive(CrewDay day) {
        return drives(day).stream()
                .map(Activity::start)
                .min(Comparator.naturalOrder())
                .orElseGet(day::start);
    }

    private static List<Activity> drives(CrewDay day) {
        return day.activities().stream()
                .filter(activity -> activity.kind() == ActivityKind.TRAVEL)
                .toList();
    }

    private List<Change> renewed(CrewDay day) {
        return round.store().ofKind("vehicle").stream()
                .filter(item -> item.id().equals(day.vehicle()) && item.state() != StoreState.OUT_OF_SERVICE)
                .flatMap(item -> item.certificates().stream()
                        .filter(held -> !held.validOn(day.date()))
                        .map(held -> renewed(day, item, held)))
                .toList();
    }

    private Change renewed(CrewDay day, StoreItem item, ItemCertificate held) {
        ItemCertificate longer = new ItemCertificate(
                held.certificate(), held.validFrom(), day.date().plusYears(1), held.note());
        List<ItemCertificate> all = item.certificates().stream()
                .map(one -> one.equals(held) ? longer : one)
                .toList();
        return new Change(
                WayCost.WORKSHOP,
                "have the " + held.certificate() + " of " + item.id() + " renewed before " + KitWords.day(day.date()),
                StoreChange.replaced(round, item, one -> one.with(all)),
                replan.tasks());
    }

    private Change hired(CrewDay day) {
        StoreItem hired = StoreChange.bought("vehicle", 1, "each", List.of());
        Round with = StoreChange.added(round, hired);
        return new Change(
                WayCost.HIRE,
                "hire a vehicle for " + KitWords.day(day.date()),
                roster(day)
                        .map(line -> Rosters.withVehicle(with, line, hired.id()))
                        .orElse(with),
                replan.tasks());
    }

    private Optional<CrewDayRoster> roster(CrewDay day) {
        return round.roster().stream()
                .filter(line -> line.crew().equals(day.crew()) && line.date().equals(day.date()))
                .findFirst();
    }
}
