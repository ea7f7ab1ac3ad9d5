package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

/** What a treatment has to cover: one pest on one kind of material. */
record PestOnMaterial(String pest, Material material) {

    PestOnMaterial on(Material other) {
        return new PestOnMaterial(pest, other);
    }

    boolean isOf(Treatment row) {
        return row.pest().equals(pest) && row.material() == material;
    }

    /** Every pair of the two, by pest, then material. */
    static List<PestOnMaterial> pairs(Collection<String> pests, Collection<Material> materials) {
        List<PestOnMaterial> pairs = new ArrayList<>();
        for (String pest : new TreeSet<>(pests)) {
            for (Material material : new TreeSet<>(materials)) {
                pairs.add(new PestOnMaterial(pest, material));
            }
        }
        return List.copyOf(pairs);
    }
}
