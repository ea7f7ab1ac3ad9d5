package org.wadeplan.planner.decon.ledger;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.AppliedTreatment;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.LooseGear;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.WeekPlan;

/**
 * Follows the items outside kit sets that must be clean on leaving: pole nets, units, meters, loose buckets. An item shares
 * the water of every visit that it was loaded for, and is treated together with the set that it was last used with, as
 * {@link LooseGear} says: in the same bath, or wiped where it must not be immersed.
 */
final class ItemLanes {

    private final Round round;
    private final KitPlan kit;
    private final List<Lane> sets;
    private final List<Touches.Visit> visits;
    private final LooseGear loose;

    ItemLanes(Round round, WeekPlan week, KitPlan kit, List<Lane> sets) {
        this.round = round;
        this.kit = kit;
        this.sets = sets;
        this.visits = Touches.visits(round, week);
        this.loose = new LooseGear(round);
    }

    /** Items that touch a water, in the store's order. */
    List<Lane> all() {
        List<Lane> lanes = new ArrayList<>();
        for (StoreItem item : round.store().items()) {
            if (item.kitSet().isEmpty()) {
                List<Touch> touches = touches(item);
                if (!touches.isEmpty()) {
                    lanes.add(lane(item, touches));
                }
            }
        }
        return List.copyOf(lanes);
    }

    private Lane lane(StoreItem item, List<Touch> touches) {
        KitSet alone = new KitSet(
                item.id(),
                KitPurpose.WADING,
                Set.of(item.material()),
                item.state(),
                item.detail().exposedTo(),
                item.detail().wetSince(),
                item.stateNote());
        int pieces = (int) Math.max(1, Math.round(item.quantity()));
        return new Lane(alone, item.label(), true, pieces, touches, treated(item, touches));
    }

    private List<Touch> touches(StoreItem item) {
        List<Touch> touches = new ArrayList<>(
                Touches.before(round, item.detail().exposedTo(), item.detail().wetSince()));
        for (CrewDayLoad load : kit.loads()) {
            for (LoadLine line : load.lines()) {
                if (line.items().contains(item.id())) {
                    visits.stream()
                            .filter(visit -> takenOn(load, line, visit))
                            .map(Touches.Visit::touch)
                            .filter(touch -> !touches.contains(touch))
                            .forEach(touches::add);
                }
            }
        }
        touches.sort(Comparator.comparing(Touch::from));
        return List.copyOf(touches);
    }

    /** Whether a line was loaded for a visit, for a part that asks for it clean. */
    private boolean takenOn(CrewDayLoad load, LoadLine line, Touches.Visit visit) {
        boolean sameDay = visit.day().crew().equals(load.crew())
                && visit.day().date().equals(load.date())
                && visit.activity().site().filter(line.forSites()::contains).isPresent();
        return sameDay
                && round.store().needs().stream()
                        .anyMatch(need -> need.clean()
                                && need.kind().equals(line.kind())
                                && visit.activity().method().equals(Optional.of(need.method()))
                                && visit.activity().part().equals(Optional.of(need.part())));
    }

    private List<Treated> treated(StoreItem item, List<Touch> touches) {
        List<Treated> treated = new ArrayList<>();
        for (Lane set : sets) {
            for (Treated cleaning : set.treated()) {
                if (lastUsedWith(touches, cleaning.start()).contains(set.id())) {
                    treated.add(asFarAsItSuits(item, cleaning));
                }
            }
        }
        treated.sort(Comparator.comparing(Treated::start));
        return List.copyOf(treated);
    }

    /** The sets of the last visit that had ended by then. */
    static List<String> lastUsedWith(List<Touch> touches, Instant at) {
        return touches.stream()
                .filter(touch -> !touch.until().isAfter(at))
                .max(Comparator.comparing(Touch::from))
                .map(Touch::with)
                .orElse(List.of());
    }

    private Treated asFarAsItSuits(StoreItem item, Treated cleaning) {
        List<Turnaround.Cover> ofTheSet =
                cleaning.credits().stream().map(Treated.Credit::cover).toList();
        LooseGear.Care care = loose.with(item, ofTheSet);
        if (care instanceof LooseGear.Care.SoakedAlong along) {
            return soaked(cleaning, along.covers());
        }
        return care instanceof LooseGear.Care.Wiped wiped
                ? wiped(cleaning, wiped)
                : notCovered(cleaning, ((LooseGear.Care.NotCovered) care).why());
    }

    private static Treated soaked(Treated cleaning, List<Turnaround.Cover> covers) {
        List<Treated.Credit> credits = cleaning.credits().stream()
                .filter(credit -> covers.contains(credit.cover()))
                .toList();
        return with(cleaning, cleaning.what(), cleaning.released(), credits, cleaning.steps(), cleaning.reasons());
    }

    /** A record of the set's soak says nothing of the wipe, so only a planned one counts. */
    private static Treated wiped(Treated cleaning, LooseGear.Care.Wiped wiped) {
        if (cleaning.onRecord()) {
            return notCovered(cleaning, List.of("no record says that it was wiped"));
        }
        double dryingH = wiped.treatments().stream()
                .mapToDouble(AppliedTreatment::dryingH)
                .max()
                .orElse(0);
        Instant counts = cleaning.crewFree().plus(Duration.ofMinutes((long) Math.ceil(dryingH * 60)));
        String what = wiped.treatments().stream().map(LooseGear::words).collect(Collectors.joining("; "));
        List<Treated.Credit> credits = wiped.covers().stream()
                .map(cover -> new Treated.Credit(cover, counts))
                .toList();
        return with(cleaning, what, Optional.of(counts), credits, List.of(), List.of());
    }

    private static Treated notCovered(Treated cleaning, List<String> why) {
        return with(cleaning, cleaning.what(), Optional.empty(), List.of(), cleaning.steps(), why);
    }

    private static Treated with(
            Treated cleaning,
            String what,
            Optional<Instant> released,
            List<Treated.Credit> credits,
            List<DeconStep> steps,
            List<String> reasons) {
        return new Treated(
                what,
                cleaning.by() + ", with the kit set",
                cleaning.start(),
                cleaning.crewFree(),
                released,
                credits,
                steps,
                cleaning.onRecord(),
                reasons);
    }
}
