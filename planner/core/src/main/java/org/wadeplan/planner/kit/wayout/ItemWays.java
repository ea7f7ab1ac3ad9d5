package org.wadeplan.planner.kit.wayout;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/** Ways out that change an item of the store: service, repair, a unit of another kit set, something hired or bought. */
final class ItemWays {

    private final Replan replan;
    private final Round round;
    private final LocalDate last;

    ItemWays(Replan replan) {
        this.replan = replan;
        this.round = replan.round();
        this.last = round.header().allDays().stream()
                .max(LocalDate::compareTo)
                .orElse(round.header().lastDay());
    }

    /** A certificate that lapsed is renewed. */
    List<Change> renewed(List<ShortDay> days) {
        List<Change> changes = new ArrayList<>();
        String by = KitWords.moment(days.get(0).firstLoad(), round.header().zone());
        LocalDate from = days.get(0).date();
        for (StoreItem item : round.store().ofKind(days.get(0).kind())) {
            for (String name : lapsed(item, days)) {
                String tag = item.stateNote().map(note -> " (" + note + ")").orElse("");
                changes.add(new Change(
                        WayCost.WORKSHOP,
                        "have the " + name + " of " + item.id() + " renewed before " + by + tag,
                        StoreChange.replaced(round, item, one -> StoreChange.certified(one, name, from, last)),
                        replan.tasks()));
            }
        }
        return changes;
    }

    private Set<String> lapsed(StoreItem item, List<ShortDay> days) {
        Set<String> names = new TreeSet<>();
        if (item.state() != StoreState.OUT_OF_SERVICE) {
            for (String name : asked(days.get(0).kind())) {
                boolean there = days.stream().allMatch(day -> item.certificates().stream()
                        .anyMatch(held -> held.certificate().equals(name) && held.validOn(day.date())));
                boolean known = item.certificates().stream()
                        .anyMatch(held -> held.certificate().equals(name));
                if (known && !there) {
                    names.add(name);
                }
            }
        }
        return names;
    }

    private Set<String> asked(String kind) {
        Set<String> names = new TreeSet<>();
        round.store().needs().stream()
                .filter(need -> need.kind().equals(kind))
                .map(KitNeed::certificate)
                .forEach(name -> name.ifPresent(names::add));
        return names;
    }

    /** What is out of service is mended. */
    List<Change> repaired(List<ShortDay> days) {
        String by = KitWords.day(days.get(0).date());
        return round.store().ofKind(days.get(0).kind()).stream()
                .filter(item -> item.state() == StoreState.OUT_OF_SERVICE)
                .map(item -> new Change(
                        WayCost.WORKSHOP,
                        "have " + item.id() + " repaired"
                                + item.stateNote()
                                        .map(note -> " (" + note + ")")
                                        .orElse("")
                                + ", clean and tried out, before " + by,
                        StoreChange.replaced(round, item, StoreChange::inService),
                        replan.tasks()))
                .toList();
    }

    /** A unit of a kit set that stays in goes over to the set that is short. */
    List<Change> fromOtherSet(List<ShortDay> days) {
        List<Change> changes = new ArrayList<>();
        ShortDay day = days.get(0);
        for (CrewDay crewDay : day.asking()) {
            for (StoreItem item : round.store().ofKind(day.kind())) {
                Optional<KitSet> own = item.kitSet().flatMap(round.store()::kitSet);
                Optional<String> into = own.flatMap(set -> target(crewDay, set));
                boolean free = own.filter(set -> staysIn(set, crewDay.start()) && clean(set, crewDay.start()))
                        .isPresent();
                if (into.isPresent() && free && item.quantity() >= day.missing()) {
                    changes.add(moved(item, own.get().id(), into.get(), day));
                }
            }
        }
        return changes;
    }

    private Change moved(StoreItem item, String own, String into, ShortDay day) {
        return new Change(
                WayCost.NONE,
                "take " + KitWords.number(day.missing()) + " of " + item.id() + " out of " + own + " into " + into
                        + " before " + KitWords.day(day.date()),
                StoreChange.added(round, StoreChange.movedTo(item, day.missing(), into, day.firstLoad())),
                replan.tasks(),
                trial -> own + " is clean and dry by then and stays in; what is moved counts as part of " + into
                        + " from there on, with all that it touches");
    }

    private Optional<String> target(CrewDay crewDay, KitSet own) {
        List<String> used = crewDay.visits().stream()
                .flatMap(visit -> visit.kitSets().stream())
                .distinct()
                .toList();
        return own.state() == StoreState.OUT_OF_SERVICE || used.contains(own.id())
                ? Optional.empty()
                : round.store().kitSets().stream()
                        .filter(set -> set.purpose() == own.purpose() && set.purpose() == KitPurpose.TRAPS)
                        .map(KitSet::id)
                        .filter(used::contains)
                        .findFirst();
    }

    /** Whether the week has no use for the set from a time on, so that a unit of it is missed nowhere. */
    private boolean staysIn(KitSet set, Instant from) {
        return replan.before().week().crewDays().stream()
                .flatMap(day -> day.visits().stream())
                .noneMatch(visit ->
                        visit.kitSets().contains(set.id()) && visit.end().isAfter(from));
    }

    /** Whether every use of the set before a time was followed by a cleaning that released it by then. */
    private boolean clean(KitSet set, Instant at) {
        Optional<Instant> lastUse = replan.before().week().crewDays().stream()
                .flatMap(day -> day.visits().stream())
                .filter(visit ->
                        visit.kitSets().contains(set.id()) && visit.start().isBefore(at))
                .map(Activity::end)
                .max(Instant::compareTo);
        if (lastUse.isEmpty()) {
            return set.state() == StoreState.CLEAN_DRY && set.exposedTo().isEmpty();
        }
        return replan.before().week().decon().stream()
                .filter(task -> task.kitSet().equals(set.id()) && !task.start().isBefore(lastUse.get()))
                .map(DeconTask::released)
                .anyMatch(released -> !released.isAfter(at));
    }

    /** Something that somebody else has, or that can be bought. */
    List<Change> got(List<ShortDay> days, double missing, String unit) {
        String kind = days.get(0).kind();
        String first = KitWords.day(days.get(0).date());
        List<ItemCertificate> certificates = asked(kind).stream()
                .map(name -> new ItemCertificate(name, Optional.empty(), last, Optional.empty()))
                .toList();
        String valid = certificates.isEmpty() ? "" : ", with a valid " + String.join(" and ", asked(kind));
        Round more = StoreChange.added(
                round, StoreChange.bought(kind, missing, unit.isBlank() ? "each" : unit, certificates));
        String what = KitWords.quantity(missing, unit) + " " + KitWords.kind(kind);
        String on = KitWords.days(days.stream().map(ShortDay::date).toList());
        Change hire = new Change(WayCost.HIRE, "hire or borrow " + what + " for " + on + valid, more, replan.tasks());
        Change buy = new Change(WayCost.BUY, "buy " + what + " before " + first + valid, more, replan.tasks());
        return unit.isBlank() ? List.of(hire, buy) : List.of(buy);
    }
}
