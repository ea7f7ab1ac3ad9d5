package org.wadeplan.planner.kit.wayout;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.ItemDetail;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** Rounds with one thing of their store changed. */
final class StoreChange {

    private StoreChange() {}

    /** With one item replaced. */
    static Round replaced(Round round, StoreItem item, UnaryOperator<StoreItem> change) {
        return with(
                round,
                round.store().items().stream()
                        .map(one -> one.id().equals(item.id()) ? change.apply(one) : one)
                        .toList());
    }

    static Round added(Round round, StoreItem item) {
        List<StoreItem> items = new ArrayList<>(round.store().items());
        items.add(item);
        return with(round, items);
    }

    /** The item with a certificate that counts on those days. */
    static StoreItem certified(StoreItem item, String certificate, LocalDate from, LocalDate until) {
        List<ItemCertificate> all = new ArrayList<>(item.certificates());
        all.add(new ItemCertificate(certificate, Optional.of(from), until, Optional.empty()));
        return item.with(List.copyOf(all));
    }

    static StoreItem inService(StoreItem item) {
        return copy(item, item.id(), item.quantity(), item.kitSet(), StoreState.CLEAN_DRY, item.availableFrom());
    }

    /** A part of the item that goes with another kit set from a time on. */
    static StoreItem movedTo(StoreItem item, double quantity, String kitSet, Instant from) {
        return copy(item, item.id() + " in " + kitSet, quantity, Optional.of(kitSet), item.state(), Optional.of(from));
    }

    /** A second line for the item from a time on, for use after somebody else's. */
    static StoreItem from(StoreItem item, Instant time) {
        return copy(item, item.id() + " again", item.quantity(), item.kitSet(), item.state(), Optional.of(time));
    }

    /** Something that the agency does not have yet. */
    static StoreItem bought(String kind, double quantity, String unit, List<ItemCertificate> certificates) {
        return new StoreItem(
                kind + " to come",
                kind,
                kind,
                quantity,
                unit,
                Optional.empty(),
                Material.HARD,
                StoreState.CLEAN_DRY,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                certificates,
                ItemDetail.NONE);
    }

    private static Round with(Round round, List<StoreItem> items) {
        Store old = round.store();
        return round.with(
                new Store(old.kitSets(), List.copyOf(items), old.needs(), old.packSeconds(), old.voltageCeilings()));
    }

    private static StoreItem copy(
            StoreItem item,
            String id,
            double quantity,
            Optional<String> kitSet,
            StoreState state,
            Optional<Instant> availableFrom) {
        return new StoreItem(
                id,
                item.kind(),
                item.label(),
                quantity,
                item.unit(),
                kitSet,
                item.material(),
                state,
                item.stateNote(),
                availableFrom,
                item.availableUntil(),
                item.expires(),
                item.healthPct(),
                item.certificates(),
                item.detail());
    }
}
