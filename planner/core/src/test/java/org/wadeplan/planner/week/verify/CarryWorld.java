package org.wadeplan.planner.week.verify;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.RoundCopies;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WaterPest;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Plans;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;

/**
 * A random world: waters, pests, evidence, kit sets, visits and cleanings, some of them tampered with. It stands on the map of
 * the demo round and on nothing else of it. One row for each treatment, pest and material, so that no row stands in for
 * another.
 */
final class CarryWorld {

    private static final List<WaterPest.PestStatus> STATES = List.of(WaterPest.PestStatus.values());
    private static final List<EvidenceGrade> GRADES = List.of(EvidenceGrade.A, EvidenceGrade.B, EvidenceGrade.C);

    private static final Round MAP = DemoRound.resolved();
    private static final List<Material> MATERIALS = List.of(Material.HARD, Material.ABSORBENT);

    private final Random random;
    final Round round;
    final WeekPlan week;
    private final List<DeconTask> tasks = new ArrayList<>();

    CarryWorld(long seed) {
        this.random = new Random(seed);
        List<Pest> pests = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            pests.add(new Pest("P" + i, "pest " + i, 3, Optional.empty()));
        }
        Biosecurity biosecurity = new Biosecurity(pests, statuses(pests), treatments(pests), steps(), List.of());
        Store store = new Store(kitSets(), List.of(), List.of(), List.of(), List.of());
        List<Water> waters = MAP.waters().stream().map(this::water).toList();
        this.round = RoundCopies.with(MAP, "waters", waters).with(biosecurity).with(store);
        this.week = week();
    }

    PlanFacts facts() {
        return facts(round);
    }

    /** The same plan held against another table of evidence. */
    PlanFacts without(Treatment row) {
        Biosecurity all = round.biosecurity();
        List<Treatment> rows = new ArrayList<>(all.treatments());
        rows.remove(row);
        return facts(round.with(new Biosecurity(all.pests(), all.waterPests(), rows, all.steps(), all.resources())));
    }

    private PlanFacts facts(Round held) {
        WeekInputs inputs = new WeekInputs(round, List.of(), List.of(), List.of(), TurnaroundPlanner.table(round));
        return new PlanFacts(held, Plans.of(inputs, week));
    }

    private Water water(Water from) {
        return new Water(
                from.id(),
                from.name(),
                from.stream(),
                from.fromMouthMinM(),
                from.fromMouthMaxM(),
                from.rank(),
                random.nextInt(5) == 0,
                false,
                Optional.empty(),
                Optional.empty());
    }

    private List<WaterPest> statuses(List<Pest> pests) {
        List<WaterPest> rows = new ArrayList<>();
        for (Water water : MAP.waters()) {
            for (Pest pest : pests) {
                int dice = random.nextInt(6);
                if (dice < 4) {
                    LocalDate asOf = LocalDate.parse(random.nextBoolean() ? "2027-06-01" : "2025-06-01");
                    rows.add(new WaterPest(water.id(), pest.id(), STATES.get(dice), asOf, "dice"));
                }
            }
        }
        return rows;
    }

    private List<Treatment> treatments(List<Pest> pests) {
        List<Treatment> rows = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            TreatmentMode mode = List.of(TreatmentMode.SOAK, TreatmentMode.SOAK, TreatmentMode.SPRAY, TreatmentMode.DRY)
                    .get(random.nextInt(4));
            boolean hot = random.nextBoolean();
            for (Pest pest : pests) {
                for (Material material : MATERIALS) {
                    if (random.nextInt(4) > 0) {
                        rows.add(treatment("T" + i, pest, material, mode, hot));
                    }
                }
            }
        }
        return rows;
    }

    private Treatment treatment(String id, Pest pest, Material material, TreatmentMode mode, boolean hot) {
        boolean dry = mode == TreatmentMode.DRY;
        EvidenceGrade grade = random.nextInt(10) == 0 ? EvidenceGrade.X : GRADES.get(random.nextInt(3));
        return new Treatment(
                id,
                pest.id(),
                material,
                dry ? "air" : hot ? "hot water" : "agent " + id,
                dry || hot ? OptionalDouble.empty() : OptionalDouble.of(20),
                dry || hot ? Optional.empty() : Optional.of("g/L product"),
                hot && !dry ? OptionalDouble.of(50) : OptionalDouble.empty(),
                mode,
                dry ? 0 : 5.0 * (1 + random.nextInt(6)),
                dry || random.nextInt(4) == 0 ? 12.0 * (1 + random.nextInt(3)) : 0,
                !dry && random.nextInt(5) == 0,
                grade,
                "dice");
    }

    private List<DeconStepRule> steps() {
        List<DeconStepRule> steps = new ArrayList<>();
        steps.add(new DeconStepRule("brush", "brush", 20, "always", Optional.empty(), "dice"));
        steps.add(new DeconStepRule("pick", "pick", 15, "plant-fragments", Optional.empty(), "dice"));
        steps.add(new DeconStepRule("rinse", "rinse", 10, "chemical", Optional.empty(), "dice"));
        steps.add(new DeconStepRule("dry", "dry", 60 * random.nextInt(7), "always", Optional.empty(), "dice"));
        return steps.stream().filter(step -> step.minutes() > 0).toList();
    }

    private List<KitSet> kitSets() {
        List<KitSet> sets = new ArrayList<>();
        for (String id : List.of("K1", "K2")) {
            Set<Material> materials = EnumSet.of(MATERIALS.get(random.nextInt(2)));
            if (random.nextBoolean()) {
                materials.addAll(MATERIALS);
            }
            List<String> exposed = random.nextInt(3) == 0
                    ? List.of(MAP.waters().get(random.nextInt(6)).id())
                    : List.of();
            sets.add(new KitSet(
                    id,
                    KitPurpose.WADING,
                    materials,
                    StoreState.CLEAN_DRY,
                    exposed,
                    Optional.empty(),
                    Optional.empty()));
        }
        return sets;
    }

    private record Outing(Site site, String water, KitSet set, Instant start, Instant end) {}

    private WeekPlan week() {
        List<Outing> outings = new ArrayList<>();
        Instant clock = Instant.parse("2027-09-06T08:00:00Z");
        for (int i = 0; i < 2 + random.nextInt(4); i++) {
            Site site = round.sites().get(random.nextInt(round.sites().size()));
            KitSet set = round.store().kitSets().get(random.nextInt(2));
            clock = clock.plus(Duration.ofHours(2 + random.nextInt(40)));
            outings.add(new Outing(
                    site, round.waterOf(site).orElseThrow().id(), set, clock, clock.plus(Duration.ofHours(1))));
            clock = clock.plus(Duration.ofHours(1));
        }
        for (KitSet set : round.store().kitSets()) {
            cleanings(set, outings.stream().filter(one -> one.set().equals(set)).toList());
        }
        List<CrewDay> days = new ArrayList<>();
        outings.forEach(outing -> days.add(day(outing.start(), visit(outing))));
        tasks.forEach(task -> days.add(day(task.start(), bench(task))));
        return new WeekPlan(days, List.copyOf(tasks), List.of(), List.of(), List.of(), List.of());
    }

    private void cleanings(KitSet set, List<Outing> outings) {
        Set<String> touched = new TreeSet<>(set.exposedTo());
        if (!touched.isEmpty() && random.nextInt(4) > 0) {
            add(set, touched, Instant.parse("2027-09-03T08:00:00Z"), outings, -1);
        }
        for (int i = 0; i < outings.size(); i++) {
            touched.add(outings.get(i).water());
            boolean samePlace = i + 1 < outings.size()
                    && touched.size() == 1
                    && touched.contains(outings.get(i + 1).water());
            if (!samePlace && random.nextInt(8) > 0) {
                add(set, touched, outings.get(i).end().plus(Duration.ofMinutes(10)), outings, i);
            }
        }
    }

    private void add(KitSet set, Set<String> touched, Instant start, List<Outing> outings, int after) {
        String next = after + 1 < outings.size()
                ? outings.get(after + 1).water()
                : round.waters().stream()
                        .map(Water::id)
                        .filter(water -> !touched.contains(water))
                        .findFirst()
                        .orElseThrow();
        Turnaround needed = new TransferRules(round).needed(set, touched, next);
        DeconTask task = task(set, List.copyOf(touched), start, needed.steps(), needed.covers());
        tasks.add(random.nextInt(4) == 0 ? tampered(task) : task);
        touched.clear();
    }

    private static DeconTask task(
            KitSet set, List<String> from, Instant start, List<DeconStep> steps, List<Turnaround.Cover> covers) {
        int busyMin = steps.stream()
                .filter(DeconStep::crewBusy)
                .mapToInt(DeconStep::minutes)
                .sum();
        int allMin = steps.stream().mapToInt(DeconStep::minutes).sum();
        return new DeconTask(
                set.id(),
                "A",
                from,
                start,
                start.plus(Duration.ofMinutes(busyMin)),
                start.plus(Duration.ofMinutes(allMin)),
                steps,
                covers,
                "dice");
    }

    private DeconTask tampered(DeconTask task) {
        KitSet set = round.store().kitSet(task.kitSet()).orElseThrow();
        List<DeconStep> steps = new ArrayList<>(task.steps());
        List<Turnaround.Cover> covers = new ArrayList<>(task.covers());
        switch (random.nextInt(6)) {
            case 0 -> steps.removeIf(step -> step.step().equals("soak"));
            case 1 -> steps.removeIf(step -> step.step().equals("dry"));
            case 2 -> steps.replaceAll(step -> changed(step, "spray", step.minutes()));
            case 3 -> steps.replaceAll(step -> changed(step, "soak", step.minutes() / 2));
            case 4 -> covers.removeIf(cover -> random.nextBoolean());
            default ->
                covers.add(new Turnaround.Cover(
                        round.biosecurity().pests().get(0).id(), Material.HARD, "T0", EvidenceGrade.A, "dice"));
        }
        return task(set, task.fromWaters(), task.start(), List.copyOf(steps), List.copyOf(covers));
    }

    private static DeconStep changed(DeconStep step, String word, int minutes) {
        return step.step().equals("soak")
                ? new DeconStep(word, step.label(), minutes, step.crewBusy(), step.resource(), step.target())
                : step;
    }

    private static CrewDay day(Instant start, Activity activity) {
        LocalDate date = LocalDate.ofInstant(start, MAP.header().zone());
        return new CrewDay("A", date, List.of(), "V1", List.of(activity));
    }

    private static Activity visit(Outing outing) {
        return new Activity(
                ActivityKind.VISIT,
                outing.start(),
                outing.end(),
                outing.site().id(),
                Optional.of(outing.site().id()),
                Optional.of(VisitPart.SURVEY),
                Optional.of("EFISH"),
                List.of(outing.set().id()),
                Optional.empty(),
                "");
    }

    private static Activity bench(DeconTask task) {
        return new Activity(
                ActivityKind.DECON,
                task.start(),
                task.crewFree(),
                "DEPOT",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(task.kitSet()),
                Optional.empty(),
                "");
    }
}
