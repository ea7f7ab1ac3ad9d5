package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.planner.method.space.Box;
import org.wadeplan.planner.method.space.CoverSearch;
import org.wadeplan.planner.method.space.RankedSearch;

/**
 * Rules that never answer, and rules that could go without any case coming out otherwise. Looked at from the last to the
 * first, each against those that are still needed, so that of two alike the later one is named.
 */
final class Rows {

    private final AuditedTable audited;
    private final Overlaps overlaps;
    private final List<Integer> neverMatching = new ArrayList<>();
    private final List<Integer> neverFirst = new ArrayList<>();
    private final List<Integer> redundant = new ArrayList<>();

    Rows(AuditedTable audited, Overlaps overlaps) {
        this.audited = audited;
        this.overlaps = overlaps;
        for (int index = audited.boxes().size() - 1; index >= 0; index--) {
            sort(index);
        }
    }

    /** Rules whose cells no possible case passes, by index, rising. */
    List<Integer> neverMatching() {
        return neverMatching.stream().sorted().toList();
    }

    /** Rules that others go before wherever they match; only where the hit policy goes by rank. */
    List<Integer> neverFirst() {
        return neverFirst.stream().sorted().toList();
    }

    List<Integer> redundant() {
        return redundant.stream().sorted().toList();
    }

    /** The rules that make this one needless or go before it. */
    List<Integer> instead(int index) {
        boolean ranked = audited.table().hitPolicy().ranks();
        List<Integer> all = overlaps.neighbours(index).stream()
                .filter(other -> !neverMatching.contains(other))
                .filter(other ->
                        ranked ? goesBefore(other, index) || redundant.contains(index) : saysTheSame(other, index))
                .toList();
        List<Integer> single = all.stream()
                .filter(other -> !redundant.contains(other))
                .filter(other ->
                        audited.boxes().get(other).covers(audited.boxes().get(index)))
                .filter(other -> !redundant.contains(index) || saysTheSame(other, index))
                .limit(1)
                .toList();
        return single.isEmpty() ? all : single;
    }

    private void sort(int index) {
        Box box = audited.boxes().get(index);
        if (box.isVoid()) {
            neverMatching.add(index);
            return;
        }
        List<Integer> kept = overlaps.neighbours(index).stream()
                .filter(other -> !redundant.contains(other))
                .toList();
        if (audited.table().hitPolicy().ranks()) {
            ranked(index, box, kept);
        } else {
            boxes(kept.stream().filter(other -> saysTheSame(other, index)).toList(), box, redundant, index);
        }
    }

    private void ranked(int index, Box box, List<Integer> kept) {
        List<Integer> before =
                kept.stream().filter(other -> goesBefore(other, index)).toList();
        int known = redundant.size();
        boxes(before.stream().filter(other -> saysTheSame(other, index)).toList(), box, redundant, index);
        if (redundant.size() > known) {
            return;
        }
        boxes(before, box, neverFirst, index);
        // A rule that never answers may take over once this one is gone, or be deleted too: neither may change a case.
        List<Integer> answering =
                kept.stream().filter(other -> !neverFirst.contains(other)).toList();
        if (!neverFirst.contains(index) && repeatedByRank(index, box, kept) && repeatedByRank(index, box, answering)) {
            redundant.add(index);
        }
    }

    private void boxes(List<Integer> others, Box box, List<Integer> into, int index) {
        CoverSearch search =
                new CoverSearch(others.stream().map(audited.boxes()::get).toList());
        if (search.firstHole(box).isEmpty() && !search.gaveUp()) {
            into.add(index);
        }
    }

    /** Whether, with this rule gone, the first of the others says the same wherever this one is first now. */
    private boolean repeatedByRank(int index, Box box, List<Integer> kept) {
        List<Integer> ordered = kept.stream()
                .sorted((a, b) -> a.equals(b) ? 0 : goesBefore(a, b) ? -1 : 1)
                .toList();
        List<RankedSearch.Ranked> ranked = ordered.stream()
                .map(other -> new RankedSearch.Ranked(
                        audited.boxes().get(other), goesBefore(other, index) || saysTheSame(other, index)))
                .toList();
        return new RankedSearch(ranked).firstIsAlwaysGood(box);
    }

    private boolean saysTheSame(int a, int b) {
        return audited.sameOutputs(a, b);
    }

    private boolean goesBefore(int other, int index) {
        int order = audited.table().hitPolicy().byOutputValues()
                ? audited.table().compareOutputs(audited.rule(other), audited.rule(index))
                : 0;
        return order < 0 || (order == 0 && other < index);
    }
}
