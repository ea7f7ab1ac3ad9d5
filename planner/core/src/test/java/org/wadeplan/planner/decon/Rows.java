package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.round.WaterPest;

/** Small records made by hand. */
final class Rows {

    static final LocalDate FIRST_DAY = LocalDate.of(2027, 9, 6);

    private static final List<DeconStepRule> STEPS = List.of(
            step("brush", 20, "always"),
            step("pick", 15, "plant-fragments"),
            step("rinse", 10, "chemical"),
            step("hang", 10, "chemical"),
            step("rinse", 30, "heat"),
            step("check-rinse", 15, "same-water"));

    private static final List<DeconResource> RESOURCES = List.of(
            new DeconResource(
                    "tub",
                    "tub",
                    2,
                    Optional.of("oxidiser"),
                    OptionalDouble.of(60),
                    OptionalDouble.of(20),
                    Optional.empty()),
            new DeconResource(
                    "bay",
                    "hot bay",
                    1,
                    Optional.of("hot water"),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty()));

    private Rows() {}

    static DeconStepRule step(String step, int minutes, String when) {
        return new DeconStepRule(step, step, minutes, when, Optional.empty(), "demo");
    }

    static Treatment hot(
            String id, String pest, Material material, double tempC, double contactMin, EvidenceGrade grade) {
        return new Treatment(
                id,
                pest,
                material,
                "hot water",
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.of(tempC),
                TreatmentMode.SOAK,
                contactMin,
                0,
                false,
                grade,
                "source of " + id);
    }

    static Treatment oxidiser(
            String pest, Material material, TreatmentMode mode, double contactMin, EvidenceGrade grade) {
        return chemical("oxidiser", "oxidiser", pest, material, mode, contactMin, grade);
    }

    static Treatment chemical(
            String id,
            String agent,
            String pest,
            Material material,
            TreatmentMode mode,
            double contactMin,
            EvidenceGrade grade) {
        return new Treatment(
                id,
                pest,
                material,
                agent,
                OptionalDouble.of(20),
                Optional.of("g/L product"),
                OptionalDouble.empty(),
                mode,
                contactMin,
                0,
                false,
                grade,
                "source of " + id);
    }

    static Treatment dry(String pest, Material material, double dryingH) {
        return new Treatment(
                "dry",
                pest,
                material,
                "air",
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                TreatmentMode.DRY,
                0,
                dryingH,
                false,
                EvidenceGrade.C,
                "source of dry");
    }

    static Treatment picked(Treatment row) {
        return new Treatment(
                row.id(),
                row.pest(),
                row.material(),
                row.agent(),
                row.strength(),
                row.strengthBasis(),
                row.tempC(),
                row.mode(),
                row.contactMin(),
                row.dryingH(),
                true,
                row.grade(),
                row.source());
    }

    static Biosecurity biosecurity(List<Treatment> treatments, WaterPest... waterPests) {
        List<Pest> pests = treatments.stream()
                .map(Treatment::pest)
                .distinct()
                .sorted()
                .map(id -> new Pest(id, id, 4, Optional.empty()))
                .toList();
        return new Biosecurity(pests, List.of(waterPests), treatments, STEPS, RESOURCES);
    }

    static WaterPest at(String water, String pest, WaterPest.PestStatus status, String asOf) {
        return new WaterPest(water, pest, status, LocalDate.parse(asOf), "demo");
    }

    static KitSet kitSet(String id, Set<Material> materials) {
        return new KitSet(
                id, KitPurpose.WADING, materials, StoreState.CLEAN_DRY, List.of(), Optional.empty(), Optional.empty());
    }
}
