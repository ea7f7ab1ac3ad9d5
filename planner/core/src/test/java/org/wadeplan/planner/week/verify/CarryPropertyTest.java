package org.wadeplan.planner.week.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.round.WaterPest;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;

/** Random weeks against an oracle that tries every touch, pest, material, cleaning and row, and shares no code with the check. */
class CarryPropertyTest {

    private static final List<WeekRule> RULES = List.of(
            new KitCleanRule(), new ExposureRule(), new CleaningRule(), new CleaningEvidenceRule(), new DryingRule());

    private static boolean passes(PlanFacts facts) {
        return RULES.stream()
                .flatMap(rule -> rule.check(facts).stream())
                .noneMatch(problem -> problem.severity() == Severity.ERROR);
    }

    @Property(tries = 500)
    void noWeekThatPassesEverBringsAnUnsupportedExposureIntoAWater(@ForAll long seed) {
        CarryWorld world = new CarryWorld(seed);
        boolean passes = passes(world.facts());
        List<String> carried = carried(world);

        Statistics.label("check").collect(passes ? "passes" : carried.isEmpty() ? "refused" : "refused and carries");
        Statistics.label("check").coverage(coverage -> {
            coverage.check("passes").percentage(share -> share > 5);
            coverage.check("refused and carries").percentage(share -> share > 5);
        });
        if (passes) {
            assertThat(carried).isEmpty();
        }
    }

    @Property(tries = 200)
    void takingARowOfEvidenceAwayNeverMakesAWeekPass(@ForAll long seed) {
        CarryWorld world = new CarryWorld(seed);
        if (!passes(world.facts())) {
            for (Treatment row : world.round.biosecurity().treatments()) {
                if (row.grade() != EvidenceGrade.X) {
                    assertThat(passes(world.without(row))).as("without %s", row).isFalse();
                }
            }
        }
    }

    private record Stay(String water, Instant from, Instant until) {}

    private static List<String> carried(CarryWorld world) {
        List<String> carried = new ArrayList<>();
        for (KitSet set : world.round.store().kitSets()) {
            List<Stay> stays = stays(world, set);
            for (Stay into : stays) {
                for (Stay from : stays) {
                    if (!from.water().equals(into.water()) && !from.until().isAfter(into.from())) {
                        carried.addAll(open(world, set, from, into));
                    }
                }
            }
        }
        return carried;
    }

    private static List<Stay> stays(CarryWorld world, KitSet set) {
        List<Stay> stays = new ArrayList<>();
        set.exposedTo().forEach(water -> stays.add(new Stay(water, Instant.MIN, Instant.MIN)));
        for (CrewDay day : world.week.crewDays()) {
            for (Activity visit : day.visits()) {
                if (visit.kitSets().contains(set.id())) {
                    String water = world.round
                            .waterOf(world.round.site(visit.place()).orElseThrow())
                            .orElseThrow()
                            .id();
                    stays.add(new Stay(water, visit.start(), visit.end()));
                }
            }
        }
        return stays;
    }

    private static List<String> open(CarryWorld world, KitSet set, Stay from, Stay into) {
        List<String> open = new ArrayList<>();
        for (Pest pest : world.round.biosecurity().pests()) {
            for (Material material : set.materials()) {
                boolean killed = world.week.decon().stream()
                        .filter(task -> task.kitSet().equals(set.id())
                                && !task.start().isBefore(from.until())
                                && !task.released().isAfter(into.from()))
                        .anyMatch(task -> kills(world.round, task, pest.id(), material));
                if (maySit(world.round, from.water(), pest.id()) && !killed) {
                    open.add(set.id() + ": " + pest.id() + " on " + material + ", " + from + " to " + into);
                }
            }
        }
        return open;
    }

    /** Found, suspected or not known there, or found free too long ago. */
    private static boolean maySit(Round round, String water, String pest) {
        return round.biosecurity().waterPests().stream()
                .filter(row -> row.water().equals(water) && row.pest().equals(pest))
                .anyMatch(row -> row.status() != WaterPest.PestStatus.FREE
                        || row.asOf().isBefore(LocalDate.parse("2026-09-06")));
    }

    /** Whether what is really done to the set is what some row asks, whatever the plan claims. */
    private static boolean kills(Round round, DeconTask task, String pest, Material material) {
        List<Treatment> about = round.biosecurity().treatments().stream()
                .filter(row -> row.pest().equals(pest) && row.material() == material)
                .toList();
        for (Treatment row : about) {
            boolean refused = about.stream()
                    .anyMatch(other -> other.grade() == EvidenceGrade.X
                            && other.id().equals(row.id())
                            && other.mode() == row.mode());
            if (!refused && isDone(task, row)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isDone(DeconTask task, Treatment row) {
        boolean picked = false;
        boolean inContact = row.mode() == TreatmentMode.DRY;
        double dryMin = 0;
        for (DeconStep step : task.steps()) {
            picked |= step.step().equals("pick");
            dryMin = step.step().equals("dry") ? step.minutes() : dryMin;
            boolean mode = step.step().equals(row.mode() == TreatmentMode.SOAK ? "soak" : "spray");
            String asked = row.tempC().isPresent() ? "50 °C" : "20 g/L product";
            inContact |= mode
                    && step.minutes() >= row.contactMin()
                    && step.target().orElse("").equals(asked);
        }
        return inContact && dryMin >= row.dryingH() * 60 && (picked || !row.pickFirst());
    }
}
