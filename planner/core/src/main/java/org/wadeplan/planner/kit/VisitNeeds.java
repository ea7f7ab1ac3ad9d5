package org.wadeplan.planner.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.effort.BatteryNeed;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;

/** What each part of each visit needs, before anyone knows on which day it falls. */
public final class VisitNeeds {

    private VisitNeeds() {}

    /** In the order of the decisions, then of a method's parts. Sites without a method, or whose method means no visit, are left out. */
    public static List<VisitKit> of(Round round, List<MethodDecision> decisions, List<VisitEffort> efforts) {
        List<VisitKit> kits = new ArrayList<>();
        for (MethodDecision decision : decisions) {
            Optional<Method> method = decision.chosen()
                    .flatMap(chosen -> round.method(chosen.method()))
                    .filter(found -> found.kind() != MethodKind.NONE);
            if (method.isPresent()) {
                for (MethodPart part : method.get().parts()) {
                    kits.add(kit(round, decision.site(), method.get(), part.part(), efforts));
                }
            }
        }
        return List.copyOf(kits);
    }

    /**
     * Whether a kit set of one purpose does for another: a full wading set does wherever waders are enough. Trap sets do for
     * traps alone.
     */
    public static boolean serves(KitPurpose set, KitPurpose asked) {
        return set == asked || (set == KitPurpose.WADING && asked == KitPurpose.WADERS_ONLY);
    }

    private static VisitKit kit(Round round, String site, Method method, VisitPart part, List<VisitEffort> efforts) {
        return new VisitKit(
                site,
                part,
                purposes(method.kind(), part),
                round.store().needs().stream()
                        .filter(need -> need.method().equals(method.id()) && need.part() == part)
                        .toList(),
                method.kind() == MethodKind.ELECTROFISHING ? packs(site, efforts) : 0);
    }

    private static List<KitPurpose> purposes(MethodKind kind, VisitPart part) {
        return switch (kind) {
            case ELECTROFISHING -> List.of(KitPurpose.WADING);
            case NETTING ->
                part == VisitPart.SET || part == VisitPart.LIFT
                        ? List.of(KitPurpose.WADERS_ONLY, KitPurpose.TRAPS)
                        : List.of(KitPurpose.WADERS_ONLY);
            case SPOTLIGHTING, DRY_RECORD -> List.of(KitPurpose.WADERS_ONLY);
            case NONE -> List.of();
        };
    }

    private static int packs(String site, List<VisitEffort> efforts) {
        return efforts.stream()
                .filter(effort -> effort.site().equals(site))
                .flatMap(effort -> effort.batteries().stream())
                .mapToInt(BatteryNeed::packs)
                .findFirst()
                .orElse(0);
    }
}
