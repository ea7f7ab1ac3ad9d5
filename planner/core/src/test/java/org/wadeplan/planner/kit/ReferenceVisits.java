package org.wadeplan.planner.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.wadeplan.planner.effort.BatteryNeed;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome;

/** Methods and batteries of the Ilvermoor scenario, sections 4.2 and 4.6, as the steps before would give them. */
final class ReferenceVisits {

    private static final Map<String, String> METHODS = new TreeMap<>(Map.ofEntries(
            Map.entry("BRN-01", "EFISH"),
            Map.entry("BRN-02", "EFISH"),
            Map.entry("BRN-03", "TRAP"),
            Map.entry("HSK-01", "EFISH"),
            Map.entry("HSK-02", "SPOT"),
            Map.entry("TOL-01", "EFISH"),
            Map.entry("TOL-02", "RECORD_DRY"),
            Map.entry("TOL-03", "EFISH_AM"),
            Map.entry("OUN-01", "EFISH"),
            Map.entry("OUN-02B", "EFISH"),
            Map.entry("OUN-03", "EFISH"),
            Map.entry("PEL-01", "TRAP"),
            Map.entry("PEL-02", "SPOT")));

    private ReferenceVisits() {}

    static List<MethodDecision> decisions() {
        return METHODS.entrySet().stream()
                .map(entry -> new MethodDecision(
                        entry.getKey(),
                        new MethodOutcome.Chosen(1, "1", entry.getValue(), OptionalInt.empty(), List.of()),
                        "survey-method",
                        "0"))
                .toList();
    }

    static List<VisitEffort> efforts() {
        return List.of(
                battery("BRN-01", 2150, 2400, 2),
                battery("BRN-02", 2790, 2400, 2),
                battery("HSK-01", 1980, 2400, 2),
                battery("TOL-01", 2460, 2000, 2),
                battery("TOL-03", 2610, 2000, 2),
                battery("OUN-01", 2540, 1700, 2),
                battery("OUN-02B", 2900, 1700, 3),
                battery("OUN-03", 3420, 1400, 4));
    }

    private static VisitEffort battery(String site, int shockS, int usableS, int packs) {
        return new VisitEffort(
                site,
                "EFISH",
                List.of(),
                Optional.empty(),
                Optional.of(new BatteryNeed(shockS, usableS, 1.25, packs, "scenario 4.6")),
                Optional.empty());
    }
}
