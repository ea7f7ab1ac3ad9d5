package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.Turnaround.Cover;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.week.DeconTask;

/** What one treatment covers by one source, pests and materials together. */
record DeconCovers(String treatment, String mode, String pairs, String grade, String source) {

    private record Key(String treatment, String grade, String source) {}

    /** In order of the task's covers. */
    static List<DeconCovers> of(Round round, DeconTask task) {
        Map<Key, List<Cover>> groups = new LinkedHashMap<>();
        for (Cover cover : task.covers()) {
            Key key = new Key(cover.treatment(), cover.grade().name(), cover.source());
            groups.computeIfAbsent(key, none -> new ArrayList<>()).add(cover);
        }
        List<DeconCovers> rows = new ArrayList<>();
        groups.forEach((key, covers) -> rows.add(new DeconCovers(
                key.treatment(), mode(round, covers.get(0)), pairs(covers), key.grade(), key.source())));
        return List.copyOf(rows);
    }

    private static String pairs(List<Cover> covers) {
        Map<String, String> materials = covers.stream()
                .collect(Collectors.toMap(
                        Cover::pest,
                        cover -> cover.material().name().toLowerCase(Locale.ROOT),
                        (one, other) -> one.contains(other) ? one : one + " and " + other,
                        LinkedHashMap::new));
        return materials.entrySet().stream()
                .map(one -> one.getKey() + " (" + one.getValue() + ")")
                .collect(Collectors.joining(", "));
    }

    private static String mode(Round round, Cover cover) {
        return round.biosecurity().treatments().stream()
                .filter(row -> row.id().equals(cover.treatment()) && row.pest().equals(cover.pest()))
                .map(Treatment::mode)
                .map(known -> known.name().toLowerCase(Locale.ROOT))
                .findFirst()
                .orElse("not stated");
    }
}
