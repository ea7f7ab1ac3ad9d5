package org.wadeplan.geo.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Shares a draw's size among the strata of a frame, and says all at once why a draw cannot be made. */
final class StratumSizes {

    private final DrawDesign design;
    private final SortedMap<String, Long> lengthMm;
    private final List<Problem> problems = new ArrayList<>();

    private StratumSizes(DrawDesign design, SortedMap<String, Long> lengthMm) {
        this.design = design;
        this.lengthMm = lengthMm;
    }

    /** The size of each stratum, in the order of strata; no value where the draw cannot be made. */
    static Checked<SortedMap<String, Integer>> of(DrawDesign design, SortedMap<String, Long> eligibleMm) {
        StratumSizes sizes = new StratumSizes(design, eligibleMm);
        sizes.checkDesign();
        if (eligibleMm.isEmpty()) {
            sizes.refuse(
                    "draw-frame-empty",
                    "strata",
                    "no stretch of the mapped lines may be drawn",
                    "some length that is neither denied, dry, filtered out nor non-target",
                    "look at the record of the frame for what was left out and why");
            return Checked.failed(sizes.problems);
        }
        SortedMap<String, Integer> shared = sizes.shared();
        sizes.checkLengths(shared);
        return sizes.problems.isEmpty() ? Checked.of(shared) : Checked.failed(sizes.problems);
    }

    private void checkDesign() {
        if (design.size() < 1 || design.size() > DrawDesign.LARGEST_SIZE) {
            refuse(
                    "draw-size",
                    "size",
                    design.size() + " units are wanted",
                    "1 to " + DrawDesign.LARGEST_SIZE,
                    "give the number of reaches that the crews can visit");
        }
        if (design.reservePct() < DrawDesign.LEAST_RESERVE_PCT || design.reservePct() > DrawDesign.MOST_RESERVE_PCT) {
            refuse(
                    "draw-reserve",
                    "reserve",
                    design.reservePct() + " % in reserve are wanted",
                    "25 to 100 %: in published surveys about a fifth of drawn sites fell away, and more where land is"
                            + " in private hands",
                    "give a share in that range, such as 50");
        }
    }

    private SortedMap<String, Integer> shared() {
        if (design.allocation() instanceof Allocation.Given given) {
            return given(given.sizes());
        }
        int strata = lengthMm.size();
        if (design.size() < strata) {
            refuse(
                    "draw-size-below-strata",
                    "size",
                    design.size() + " units cannot be shared among " + strata + " strata: "
                            + String.join(", ", lengthMm.keySet()),
                    "at least " + strata + ", one for each stratum, better two or more",
                    "draw more units, or use fewer strata");
            return new TreeMap<>(Strata.IN_ORDER);
        }
        boolean equal = design.allocation() instanceof Allocation.Equal;
        Map<String, Long> weight = new TreeMap<>(lengthMm);
        weight.replaceAll((stratum, mm) -> equal ? 1 : mm);
        return byWeight(weight);
    }

    /** One each, then one by one to whoever is furthest below its due part; of several, to the longest, then the first. */
    private SortedMap<String, Integer> byWeight(Map<String, Long> weight) {
        double all = weight.values().stream().mapToLong(Long::longValue).sum();
        SortedMap<String, Integer> sizes = new TreeMap<>(Strata.IN_ORDER);
        lengthMm.keySet().forEach(stratum -> sizes.put(stratum, 1));
        for (int given = sizes.size(); given < design.size(); given++) {
            String neediest = sizes.keySet().stream()
                    .max(Comparator.comparingDouble((String stratum) ->
                                    design.size() * (length(weight, stratum) / all) - sizes.getOrDefault(stratum, 0))
                            .thenComparingLong(stratum -> length(lengthMm, stratum))
                            .thenComparing(Strata.IN_ORDER.reversed()))
                    .orElseThrow();
            sizes.merge(neediest, 1, Integer::sum);
        }
        return sizes;
    }

    private static long length(Map<String, Long> lengths, String stratum) {
        return lengths.getOrDefault(stratum, 0L);
    }

    private SortedMap<String, Integer> given(Map<String, Integer> wanted) {
        TreeSet<String> strangers = new TreeSet<>(Strata.IN_ORDER);
        strangers.addAll(wanted.keySet());
        strangers.removeAll(lengthMm.keySet());
        strangers.forEach(stranger -> refuse(
                "draw-stratum-unknown",
                "strata",
                "there is no stratum \"" + stranger + "\" with any length to draw from",
                "one of " + String.join(", ", lengthMm.keySet()),
                "correct its name, or leave it out"));
        SortedMap<String, Integer> sizes = new TreeMap<>(Strata.IN_ORDER);
        for (String stratum : lengthMm.keySet()) {
            int size = wanted.getOrDefault(stratum, 0);
            sizes.put(stratum, size);
            if (size < 1) {
                refuse(
                        "draw-stratum-without-units",
                        "strata",
                        "stratum \"" + stratum + "\" gets " + size + " units, so its " + km(length(lengthMm, stratum))
                                + " could not be drawn from",
                        "1 or more for every stratum",
                        "give it a number, or leave its lines out of the frame");
            }
        }
        int sum = wanted.values().stream().mapToInt(Integer::intValue).sum();
        if (sum != design.size()) {
            refuse(
                    "draw-allocation-sum",
                    "strata",
                    "the strata's numbers add up to " + sum,
                    "the size, " + design.size(),
                    "correct the numbers or the size");
        }
        return sizes;
    }

    private void checkLengths(SortedMap<String, Integer> sizes) {
        sizes.forEach((stratum, size) -> {
            long haveMm = length(lengthMm, stratum);
            long needMm = Math.round((size + design.reserves(size)) * design.reachLengthM() * 1000);
            if (size > 0 && haveMm < needMm) {
                refuse(
                        sizes.size() == 1 ? "draw-size-over-frame" : "draw-stratum-short",
                        sizes.size() == 1 ? "size" : "strata",
                        size + " units and " + design.reserves(size) + " reserves in stratum \"" + stratum
                                + "\", which has " + km(haveMm),
                        km(needMm) + " or more: room for all reaches end to end",
                        "draw at most " + most(haveMm) + " there, or hold fewer in reserve, or join strata");
            }
        });
    }

    private long most(long haveMm) {
        return (long) (haveMm / (design.reachLengthM() * 1000 * (1 + design.reservePct() / 100.0)));
    }

    private static String km(long mm) {
        return String.format(Locale.ROOT, "%.2f km", mm / 1e6);
    }

    private void refuse(String code, String part, String found, String expected, String remedy) {
        problems.add(Problem.error(code, SourcePlace.part("draw", part), found, expected, remedy));
    }
}
