package org.wadeplan.planner.method.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.space.Box;

/** Regions in parts, with what makes the finding first. */
final class RegionParts {

    private RegionParts() {}

    static List<RegionPart> causesFirst(AuditedTable audited, Box box, List<Integer> causes) {
        List<RegionPart> parts = new ArrayList<>();
        causes.forEach(column -> parts.add(audited.part(box, column, true)));
        IntStream.range(0, audited.width())
                .filter(column -> !causes.contains(column) && !audited.space().isFree(box, column))
                .forEach(column -> parts.add(audited.part(box, column, false)));
        return List.copyOf(parts);
    }

    /** What all the boxes ask alike: a column in which they differ is left free. */
    static Box common(AuditedTable audited, List<Box> boxes) {
        Box common = boxes.get(0);
        for (int column = 0; column < audited.width(); column++) {
            int at = column;
            Box first = boxes.get(0);
            if (boxes.stream().anyMatch(box -> !box.sameIn(at, first))) {
                common = audited.space().moved(common, at, audited.space().whole());
            }
        }
        return common;
    }
}
