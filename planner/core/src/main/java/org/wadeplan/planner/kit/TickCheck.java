package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.planner.kit.TickObjection.Ground;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** Judges whether an item or kit set may be ticked as loaded for a crew-day. Writes nothing. */
public final class TickCheck {

    private final Round round;
    private final WeekPlan week;
    private final KitPlan kit;
    private final TickItem item;

    private TickCheck(Round round, WeekPlan week, KitPlan kit, KitStates states) {
        this.round = round;
        this.week = week;
        this.kit = kit;
        this.item = new TickItem(round, week, states);
    }

    /** By the week in force, its loads and what was recorded and ticked so far. */
    public static TickOutcome check(Round round, WeekPlan week, KitPlan kit, TickRequest request) {
        return check(round, week, kit, new LedgerKitStates(round, week, kit), request);
    }

    /** What the ledger knows of the kit sets, for asking about many items of one list: ticks change nothing of it. */
    public static KitStates states(Round round, WeekPlan week, KitPlan kit) {
        return new LedgerKitStates(round, week, kit);
    }

    /** The same, with another account of what state kit sets are in. */
    public static TickOutcome check(Round round, WeekPlan week, KitPlan kit, KitStates states, TickRequest request) {
        return new TickCheck(round, week, kit, states).outcome(request);
    }

    private TickOutcome outcome(TickRequest request) {
        List<TickObjection> objections = objections(request);
        boolean overridable = objections.stream().allMatch(one -> one.ground().overridable());
        if (!objections.isEmpty() && !(overridable && request.override().isPresent())) {
            return new TickOutcome.Refused(objections);
        }
        boolean needed = !objections.isEmpty();
        return new TickOutcome.Accepted(
                new LoadTick(
                        request.date(),
                        request.crew(),
                        request.item(),
                        request.at(),
                        request.by(),
                        request.override().filter(any -> needed).map(TickRequest.TickOverride::by),
                        request.override().filter(any -> needed).map(TickRequest.TickOverride::reason)),
                objections,
                item.remarks(request));
    }

    private List<TickObjection> objections(TickRequest request) {
        Optional<CrewDay> day = week.crewDay(request.crew(), request.date());
        if (day.isEmpty()) {
            return List.of(new TickObjection(
                    Ground.NO_SUCH_CREW_DAY,
                    "crew " + request.crew() + " has nothing to load on " + request.date(),
                    "the week has " + crewDays()));
        }
        Optional<StoreItem> serial = round.store().items().stream()
                .filter(one -> one.id().equals(request.item()))
                .findFirst();
        Optional<KitSet> set = round.store().kitSet(request.item());
        if (serial.isEmpty() && set.isEmpty()) {
            return List.of(new TickObjection(
                    Ground.UNKNOWN_ITEM,
                    request.item() + " is neither an item nor a kit set of the store",
                    "see the load list for what is"));
        }
        List<TickObjection> found = new ArrayList<>();
        ticked(request, day.get(), serial).ifPresent(found::add);
        notOnList(request, serial).ifPresent(found::add);
        serial.ifPresent(one -> found.addAll(item.ofItem(one, day.get(), request.at())));
        set.ifPresent(one -> found.addAll(item.ofSet(one, day.get(), request.at())));
        return List.copyOf(found);
    }

    private String crewDays() {
        List<String> days = week.crewDays().stream()
                .map(day -> day.crew() + " " + day.date())
                .toList();
        return days.isEmpty() ? "no crew-days" : String.join(", ", days);
    }

    /** An item is in one place: ticked once for a crew-day, and on no other crew-day that is out at the same time. */
    private Optional<TickObjection> ticked(TickRequest request, CrewDay day, Optional<StoreItem> serial) {
        boolean several = serial.filter(
                        one -> one.quantity() > 1 && one.kitSet().isEmpty())
                .isPresent();
        for (LoadTick tick : round.log().ticks()) {
            if (tick.item().equals(request.item())) {
                boolean own = tick.crew().equals(request.crew()) && tick.date().equals(request.date());
                if (own) {
                    return Optional.of(new TickObjection(
                            Ground.ALREADY_TICKED,
                            request.item() + " was ticked for this crew-day already by " + tick.by(),
                            "nothing, or take the tick back first"));
                }
                if (!several && meets(tick, day)) {
                    return Optional.of(new TickObjection(
                            Ground.WITH_OTHER_CREW,
                            request.item() + " is ticked on crew " + tick.crew() + " on " + tick.date()
                                    + ", which is out at the same time",
                            "take that tick back, or take another serial"));
                }
            }
        }
        return Optional.empty();
    }

    private boolean meets(LoadTick tick, CrewDay day) {
        return week.crewDay(tick.crew(), tick.date())
                .map(other -> other.start().isBefore(day.end()) && day.start().isBefore(other.end()))
                .orElse(tick.date().equals(day.date()));
    }

    private Optional<TickObjection> notOnList(TickRequest request, Optional<StoreItem> serial) {
        List<LoadLine> lines = lines(request.crew(), request.date());
        boolean listed = lines.stream()
                .anyMatch(line -> line.items().contains(request.item())
                        || (line.items().isEmpty()
                                && line.quantity() > 0
                                && serial.filter(one -> one.kind().equals(line.kind()))
                                        .isPresent()));
        if (listed) {
            return Optional.empty();
        }
        String kind = serial.map(StoreItem::kind).orElse("kit-set");
        Set<String> instead = new LinkedHashSet<>();
        lines.stream().filter(line -> line.kind().equals(kind)).forEach(line -> instead.addAll(line.items()));
        return Optional.of(new TickObjection(
                Ground.NOT_ON_LIST,
                request.item() + " is not on the load list of crew " + request.crew() + " for " + request.date(),
                instead.isEmpty()
                        ? "it has no " + KitWords.kind(kind) + " at all"
                        : "the list has " + KitWords.kind(kind) + " " + String.join(", ", instead)));
    }

    private List<LoadLine> lines(String crew, LocalDate date) {
        return kit.loads().stream()
                .filter(load -> load.crew().equals(crew) && load.date().equals(date))
                .flatMap(load -> load.lines().stream())
                .toList();
    }
}
