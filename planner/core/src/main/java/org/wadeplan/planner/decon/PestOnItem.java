package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

/**
 * What a treatment has to cover: one pest, in one of the life stages that the table tells apart, on items that are alike.
 *
 * @param stage empty where the table speaks of the pest as a whole
 */
record PestOnItem(String pest, Optional<String> stage, ItemKind on) {

    Material material() {
        return on.material();
    }

    /** The same with everything known of the items but another material. */
    PestOnItem as(Material other) {
        return new PestOnItem(pest, stage, new ItemKind(other, on.gear(), on.kinds()));
    }

    /** Whether a row speaks of this life stage: one without a stage speaks of all. */
    boolean isOf(Treatment row) {
        return row.stage().isEmpty() || row.stage().equals(stage);
    }

    /** {@code whirling (actinospore) on hard items}, with the kinds where they are on record. */
    String words() {
        String kinds = on.kinds().isEmpty() ? "" : " (" + on.words() + ")";
        return pest + stageWords() + " on " + Words.lower(material()) + " items" + kinds;
    }

    String stageWords() {
        return stage.map(one -> " (" + one + ")").orElse("");
    }

    /** Every pest in each of its stages on each kind, by pest, stage, then kind. */
    static List<PestOnItem> all(Collection<String> pests, List<ItemKind> kinds, EvidenceTable evidence) {
        List<PestOnItem> pairs = new ArrayList<>();
        for (String pest : new TreeSet<>(pests)) {
            for (ItemKind kind : kinds) {
                for (Optional<String> stage : evidence.stages(pest)) {
                    pairs.add(new PestOnItem(pest, stage, kind));
                }
            }
        }
        return List.copyOf(pairs);
    }
}
