package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.hazards.briefing.Briefing;
import org.wadeplan.hazards.briefing.EmergencyBlock;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.round.VisitPart;

/**
 * Parts of a visit for which the same is said, so that one talk serves them: their times may differ.
 *
 * @param visits never empty
 */
record BriefingGroup(List<VisitBriefing> visits) {

    /** In the order of the parts; a part for which something else is said has a group of its own. */
    static List<BriefingGroup> of(List<VisitBriefing> briefings) {
        Map<List<Object>, List<VisitBriefing>> bySaid = new LinkedHashMap<>();
        for (VisitBriefing visit : briefings) {
            bySaid.computeIfAbsent(said(visit.briefing()), any -> new ArrayList<>())
                    .add(visit);
        }
        return bySaid.values().stream().map(BriefingGroup::new).toList();
    }

    /** All but the title, which names the day, and the emergency lines, which name times. */
    private static List<Object> said(Briefing briefing) {
        return List.of(
                briefing.goBox(),
                briefing.newHere(),
                briefing.hazards(),
                briefing.alsoCanKill(),
                briefing.stops(),
                briefing.rise(),
                briefing.reminders(),
                briefing.cautions(),
                briefing.back());
    }

    Briefing briefing() {
        return visits.get(0).briefing();
    }

    /** {@code mark and night} */
    String parts() {
        return visits.stream().map(visit -> visit.part().word()).collect(Collectors.joining(" and "));
    }

    /** The lines of the first part; where another part's line differs, both with the name of their part. */
    List<EmergencyBlock.Line> emergency() {
        List<EmergencyBlock.Line> lines = new ArrayList<>();
        for (EmergencyBlock.Line first : briefing().emergency()) {
            Map<VisitPart, EmergencyBlock.Line> byPart = new LinkedHashMap<>();
            visits.forEach(visit -> visit.briefing().emergency().stream()
                    .filter(line -> line.label().equals(first.label()))
                    .forEach(line -> byPart.put(visit.part(), line)));
            Set<EmergencyBlock.Line> different = new LinkedHashSet<>(byPart.values());
            lines.add(different.size() < 2 ? first : joined(first.label(), byPart));
        }
        return lines;
    }

    private static EmergencyBlock.Line joined(String label, Map<VisitPart, EmergencyBlock.Line> byPart) {
        String text = byPart.entrySet().stream()
                .map(entry -> entry.getKey().word() + " " + entry.getValue().text())
                .collect(Collectors.joining(", "));
        return new EmergencyBlock.Line(label, text, byPart.values().stream().allMatch(EmergencyBlock.Line::known));
    }
}
