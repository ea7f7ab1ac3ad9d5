package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.round.Validity;
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

    static Treatment freeze(String pest, Material material, double contactMin, EvidenceGrade grade) {
        return new Treatment(
                "freeze",
                pest,
                material,
                "cold",
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.of(-20),
                TreatmentMode.FREEZE,
                contactMin,
                0,
                false,
                grade,
                "source of freeze");
    }

    /** The row about one life stage; about the whole pest where the stage is blank. */
    static Treatment staged(Treatment row, String stage) {
        return changed(row, row.grade(), stage.isEmpty() ? Optional.empty() : Optional.of(stage), row.validity());
    }

    /** A trial of the same treatment that found no effect. */
    static Treatment refusing(Treatment row) {
        return changed(row, EvidenceGrade.X, row.stage(), row.validity());
    }

    static Treatment valid(Treatment row, String from, String until, String place) {
        return changed(
                row,
                row.grade(),
                row.stage(),
                new Validity(
                        from.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(from)),
                        until.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(until)),
                        place.isEmpty() ? Optional.empty() : Optional.of(place)));
    }

    private static Treatment changed(Treatment row, EvidenceGrade grade, Optional<String> stage, Validity validity) {
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
                row.pickFirst(),
                grade,
                row.source(),
                stage,
                validity);
    }

    static GearClass gear(String id, Material material, double maxTempC, Set<String> harmedBy) {
        return gear(id, material, maxTempC, harmedBy, Immersion.WHOLE, true);
    }

    static GearClass gear(
            String id,
            Material material,
            double maxTempC,
            Set<String> harmedBy,
            Immersion immersion,
            boolean freezing) {
        return new GearClass(
                id,
                id,
                material,
                immersion,
                OptionalDouble.of(maxTempC),
                harmedBy,
                freezing,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                "demo");
    }

    static DeconRule rule(String id, DeconRule.Kind kind, double value, Validity validity) {
        return new DeconRule(
                id,
                kind,
                value < 0 ? OptionalDouble.empty() : OptionalDouble.of(value),
                List.of(),
                List.of(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                validity,
                "text of " + id + ".",
                Optional.empty(),
                "source of " + id);
    }

    /** The same biosecurity with rules of a place. */
    static Biosecurity with(Biosecurity old, Optional<String> place, List<DeconRule> rules) {
        return new Biosecurity(
                old.pests(),
                old.waterPests(),
                old.treatments(),
                old.steps(),
                old.resources(),
                old.gear(),
                rules,
                place);
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
