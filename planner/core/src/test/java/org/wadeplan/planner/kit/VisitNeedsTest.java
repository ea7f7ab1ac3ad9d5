package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.VisitPart;

class VisitNeedsTest {

    private static final List<VisitKit> KITS =
            VisitNeeds.of(DemoRound.resolved(), ReferenceVisits.decisions(), ReferenceVisits.efforts());

    private static VisitKit kit(String site, VisitPart part) {
        return KITS.stream()
                .filter(kit -> kit.site().equals(site) && kit.part() == part)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void electrofishingNeedsAFullWadingSetAndItsPacks() {
        VisitKit kit = kit("OUN-03", VisitPart.SURVEY);
        assertThat(kit.purposes()).containsExactly(KitPurpose.WADING);
        assertThat(kit.batteryPacks()).isEqualTo(4);
        assertThat(kit.needs()).extracting("kind").contains("backpack-unit", "insulating-gloves", "anaesthetic");
    }

    @Test
    void netsNeedATrapSetBesideWadersOnBothDays() {
        assertThat(kit("PEL-01", VisitPart.SET).purposes()).containsExactly(KitPurpose.WADERS_ONLY, KitPurpose.TRAPS);
        assertThat(kit("PEL-01", VisitPart.LIFT).purposes()).containsExactly(KitPurpose.WADERS_ONLY, KitPurpose.TRAPS);
        assertThat(kit("PEL-01", VisitPart.LIFT).batteryPacks()).isZero();
    }

    @Test
    void waderSetsDoForSpotlightAndDryCheckAndWadingSetsDoToo() {
        assertThat(kit("HSK-02", VisitPart.NIGHT).purposes()).containsExactly(KitPurpose.WADERS_ONLY);
        assertThat(kit("TOL-02", VisitPart.DRY_CHECK).purposes()).containsExactly(KitPurpose.WADERS_ONLY);
        assertThat(VisitNeeds.serves(KitPurpose.WADING, KitPurpose.WADERS_ONLY)).isTrue();
        assertThat(VisitNeeds.serves(KitPurpose.WADERS_ONLY, KitPurpose.WADING)).isFalse();
        assertThat(VisitNeeds.serves(KitPurpose.WADING, KitPurpose.TRAPS)).isFalse();
    }

    @Test
    void leavesOutSitesWithoutAMethod() {
        MethodDecision undecided =
                new MethodDecision("BRN-01", new MethodOutcome.NoRule(List.of()), "survey-method", "0");
        assertThat(VisitNeeds.of(DemoRound.resolved(), List.of(undecided), List.of()))
                .isEmpty();
    }
}
