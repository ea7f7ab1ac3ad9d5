package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.schedule.BathPlan;
import org.wadeplan.planner.decon.schedule.BenchTask;
import org.wadeplan.planner.decon.schedule.PlannedBath;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * What the printed sheet of one cleaning shows besides {@link DeconSheetFacts}: its place on the bench, its baths, its items
 * and who else must look.
 *
 * @param bench the cleaning by the clock; empty where the week has no such cleaning
 * @param baths that the set lies in, by when they must be ready
 * @param items of the set, alike ones together
 * @param secondPerson why a second person must check; empty where nothing asks for one
 */
public record CleaningSheet(
        DeconSheetFacts facts,
        Optional<BenchTask> bench,
        List<PlannedBath> baths,
        List<Items> items,
        Optional<String> secondPerson) {

    /**
     * Items that are alike.
     *
     * @param words how many of what
     * @param bears what they bear, and what is never used on them, in words
     * @param barred what of this cleaning may not be used on them, with why; none where all of it may
     */
    public record Items(String words, String material, String bears, List<String> barred) {}

    public static CleaningSheet of(Round round, WeekPlan week, BathPlan plan, DeconTask task) {
        Optional<BenchTask> bench = plan.bench().tasks().stream()
                .filter(one -> one.kitSet().equals(task.kitSet()) && one.asked().equals(task.start()))
                .findFirst();
        return new CleaningSheet(
                DeconSheet.of(round, task),
                bench,
                bench.map(one -> baths(plan, one)).orElse(List.of()),
                items(round, task),
                secondPerson(round, week, task));
    }

    private static List<PlannedBath> baths(BathPlan plan, BenchTask bench) {
        return plan.baths().stream()
                .filter(bath -> bath.day().equals(bench.day())
                        && bath.uses().stream().anyMatch(use -> use.kitSet().equals(bench.kitSet())))
                .toList();
    }

    private static List<Items> items(Round round, DeconTask task) {
        Optional<KitSet> set = round.store().kitSet(task.kitSet());
        if (set.isEmpty()) {
            return List.of();
        }
        List<Recipe> recipes = round.biosecurity().treatments().stream()
                .filter(row -> task.covers().stream().anyMatch(cover -> isOf(row, cover)))
                .map(Recipe::of)
                .distinct()
                .sorted(Recipe.ORDER)
                .toList();
        return alike(new TransferRules(round)
                .itemsOf(set.get()).stream()
                        .map(kind -> items(round, task, kind, recipes))
                        .toList());
    }

    /** Items of one material with the same limits share a line, so that the sheet stays a page. */
    private static List<Items> alike(List<Items> items) {
        Map<List<Object>, Items> together = new LinkedHashMap<>();
        for (Items one : items) {
            together.merge(
                    List.of(one.material(), one.bears(), one.barred()),
                    one,
                    (first, more) -> new Items(
                            first.words() + ", " + more.words(), first.material(), first.bears(), first.barred()));
        }
        return List.copyOf(together.values());
    }

    private static boolean isOf(Treatment row, Turnaround.Cover cover) {
        return row.id().equals(cover.treatment()) && row.pest().equals(cover.pest());
    }

    private static Items items(Round round, DeconTask task, ItemKind kind, List<Recipe> recipes) {
        List<String> barred = new ArrayList<>();
        kind.gear()
                .ifPresent(gear -> recipes.forEach(recipe -> GearLimits.bars(gear, recipe)
                        .ifPresent(why -> barred.add("not " + recipe.words() + ": " + why))));
        kind.gear().ifPresent(gear -> barred.addAll(tooHotAtTheStart(gear, task)));
        return new Items(
                kind.kinds().isEmpty()
                        ? "anything " + Words.lower(kind.material())
                        : counted(round, task.kitSet(), kind),
                Words.lower(kind.material()),
                kind.gear().map(CleaningSheet::bears).orElse("limits not on file: ask its maker"),
                List.copyOf(barred));
    }

    /** A bath that is started hotter to hold its temperature may start hotter than the items bear. */
    private static List<String> tooHotAtTheStart(GearClass gear, DeconTask task) {
        List<String> words = new ArrayList<>();
        for (DeconStep step : task.steps()) {
            BathTarget target = BathTarget.of(step.target().orElse(""));
            double mostC = gear.maxTempC().orElse(Double.POSITIVE_INFINITY);
            boolean tooHot = step.step().equals("soak")
                    && target.hot()
                    && target.tempC().getAsDouble() <= mostC
                    && HotBath.startTempC(target.tempC().getAsDouble(), step.minutes(), true)
                                    .orElse(0)
                            > mostC;
            if (tooHot) {
                words.add("in at " + Words.number(mostC) + " °C at most: top the bath up instead of starting hotter");
            }
        }
        return words;
    }

    private static String counted(Round round, String kitSet, ItemKind kind) {
        Map<String, Double> counts = new LinkedHashMap<>();
        for (StoreItem item : round.store().items()) {
            boolean same = item.kitSet().filter(kitSet::equals).isPresent()
                    && kind.kinds().contains(item.kind())
                    && (kind.gear().isEmpty()
                            ? item.material() == kind.material()
                            : item.detail().gearClass().equals(kind.gear().map(GearClass::id)));
            if (same) {
                counts.merge(item.kind(), item.quantity(), Double::sum);
            }
        }
        return counts.entrySet().stream()
                .map(one -> Words.number(one.getValue()) + " × " + one.getKey().replace('-', ' '))
                .collect(Collectors.joining(", "));
    }

    private static String bears(GearClass gear) {
        List<String> words = new ArrayList<>();
        gear.maxTempC().ifPresent(most -> words.add("up to " + Words.number(most) + " °C"));
        if (gear.immersion() == Immersion.NONE) {
            words.add("never immersed, wipe only");
        } else if (gear.immersion() == Immersion.PART) {
            words.add("immersed in part, wipe the rest");
        }
        if (!gear.harmedBy().isEmpty()) {
            words.add("never " + gear.harmedBy().stream().sorted().collect(Collectors.joining(", ")));
        }
        if (!gear.freezing()) {
            words.add("never frozen");
        }
        return words.isEmpty() ? "no limit on file" : String.join("; ", words);
    }

    /** After a known pest, and before a protected water, somebody else looks and signs. */
    private static Optional<String> secondPerson(Round round, WeekPlan week, DeconTask task) {
        var known = PestsAtWater.of(round.biosecurity(), round.header().firstDay(), task.fromWaters())
                .known();
        if (!known.isEmpty()) {
            return Optional.of("known in " + Words.list(task.fromWaters()) + ": " + Words.list(known));
        }
        return week.crewDays().stream()
                .flatMap(day -> day.visits().stream())
                .filter(visit -> visit.kitSets().contains(task.kitSet())
                        && !visit.start().isBefore(task.start()))
                .min(Comparator.comparing(Activity::start))
                .flatMap(visit -> visit.site().flatMap(round::site).flatMap(round::waterOf))
                .filter(Water::protectedWater)
                .map(water -> "goes into " + water.name() + ", which is protected, next");
    }
}
