package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
 * the water of every visit that it was loaded for, and is treated together with the set that it was last used with. A clean
 * that would harm the item, or of which nobody knows whether the item bears it, is credited with nothing.
 */
final class ItemLanes {

    private final Round round;
    private final KitPlan kit;
    private final List<Lane> sets;
    private final List<Touches.Visit> visits;

    ItemLanes(Round round, WeekPlan week, KitPlan kit, List<Lane> sets) {
        this.round = round;
        this.kit = kit;
        this.sets = sets;
        this.visits = Touches.visits(round, week);
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
    private static List<String> lastUsedWith(List<Touch> touches, Instant at) {
        return touches.stream()
                .filter(touch -> !touch.until().isAfter(at))
                .max(Comparator.comparing(Touch::from))
                .map(Touch::with)
                .orElse(List.of());
    }

    private Treated asFarAsItSuits(StoreItem item, Treated cleaning) {
        Optional<String> barred = GearOnFile.bars(round, item, cleaning);
        List<Treated.Credit> credits = cleaning.credits().stream()
                .filter(credit -> credit.cover().material() == item.material() && barred.isEmpty())
                .toList();
        return new Treated(
                cleaning.what(),
                cleaning.by() + ", with the kit set",
                cleaning.start(),
                cleaning.crewFree(),
                cleaning.released(),
                credits,
                cleaning.steps(),
                cleaning.onRecord(),
                barred.map(List::of).orElse(cleaning.reasons()));
    }
}
