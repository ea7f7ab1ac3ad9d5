package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.wadeplan.planner.round.StoreItem;

/** How many certified items are out at the same time, against the serials that are valid and there. */
final class CertifiedUse {

    private record Use(int kind, int slot, int from, int until, int quantity) {}

    private final WeekModel model;
    private final List<Use> uses = new ArrayList<>();
    private final boolean[][][] valid;
    private final int[][] itemFrom;
    private final int[][] itemUntil;
    private String failure = "";

    CertifiedUse(WeekModel model) {
        this.model = model;
        int kinds = model.kinds().size();
        valid = new boolean[kinds][][];
        itemFrom = new int[kinds][];
        itemUntil = new int[kinds][];
        for (int kind = 0; kind < kinds; kind++) {
            fill(kind, model.kinds().get(kind));
        }
    }

    private void fill(int kind, CertifiedKind certified) {
        List<StoreItem> items = certified.items();
        valid[kind] = new boolean[model.dates().size()][items.size()];
        itemFrom[kind] = items.stream()
                .mapToInt(item -> item.availableFrom().map(model.axis()::minute).orElse(Integer.MIN_VALUE))
                .toArray();
        itemUntil[kind] = items.stream()
                .mapToInt(
                        item -> item.availableUntil().map(model.axis()::minute).orElse(Integer.MAX_VALUE))
                .toArray();
        for (int date = 0; date < model.dates().size(); date++) {
            for (int i = 0; i < items.size(); i++) {
                int on = date;
                valid[kind][date][i] = items.get(i).certificates().stream()
                        .anyMatch(one -> one.certificate().equals(certified.certificate())
                                && one.validOn(model.dates().get(on)));
            }
        }
    }

    void clear() {
        uses.clear();
    }

    int mark() {
        return uses.size();
    }

    void backTo(int mark) {
        uses.subList(mark, uses.size()).clear();
    }

    void add(int kind, int slot, int from, int until, int quantity) {
        uses.add(new Use(kind, slot, from, until, quantity));
    }

    String failure() {
        return failure;
    }

    /**
     * Gives serials to uses by start, each time the valid free ones that leave the store soonest. It may fail where a
     * cleverer handing out would not; it never succeeds wrongly.
     */
    boolean enough(boolean explain) {
        uses.sort((a, b) -> a.from != b.from ? Integer.compare(a.from, b.from) : Integer.compare(a.slot, b.slot));
        for (int kind = 0; kind < model.kinds().size(); kind++) {
            int[] freeAt = new int[itemFrom[kind].length];
            Arrays.fill(freeAt, Integer.MIN_VALUE);
            for (Use use : uses) {
                if (use.kind == kind && !hand(use, freeAt)) {
                    failure = explain ? words(use) : "";
                    return false;
                }
            }
        }
        return true;
    }

    private boolean hand(Use use, int[] freeAt) {
        int date = model.slots().get(use.slot).dateIndex();
        for (int n = 0; n < use.quantity; n++) {
            int best = -1;
            for (int i = 0; i < freeAt.length; i++) {
                boolean there = itemFrom[use.kind][i] <= use.from && itemUntil[use.kind][i] >= use.until;
                if (valid[use.kind][date][i] && there && freeAt[i] <= use.from) {
                    best = best < 0 || itemUntil[use.kind][i] < itemUntil[use.kind][best] ? i : best;
                }
            }
            if (best < 0) {
                return false;
            }
            freeAt[best] = use.until;
        }
        return true;
    }

    private String words(Use use) {
        CertifiedKind kind = model.kinds().get(use.kind);
        Slot slot = model.slots().get(use.slot);
        return slot.name() + " needs " + use.quantity + " " + kind.kind() + " with a valid "
                + kind.certificate() + " from " + model.axis().words(use.from) + " to "
                + model.axis().words(use.until)
                + " and too few of the store's " + kind.items().size()
                + " are certified, there and not with another crew.";
    }
}
