package org.wadeplan.planner.kit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.CrewDay;

/**
 * Weighs loads. A kit set travels whole, so its things are counted once, with the set. What the store gives no mass for is
 * named, never taken as nothing.
 */
public final class WeightCheck {

    /** A person in the vehicle. Mass of the driver in vehicle approval, Regulation (EU) No 1230/2012 (from memory). */
    public static final double PERSON_KG = 75;

    /**
     * From here on a carry deserves a closer look. The lower of the two filter figures for lifting close to the body at waist
     * height, 16 and 25 kg, of the Health and Safety Executive's brief guide to manual handling, INDG143 (from memory). They
     * are no limits, and hold for carries of about 10 m on good ground.
     */
    public static final double LOOK_CLOSER_KG = 16;

    /** Carries longer than this are outside what the figure speaks of, same source, metres. */
    public static final double CARRY_M = 10;

    private final Round round;
    private final Store store;

    private WeightCheck(Round round) {
        this.round = round;
        this.store = round.store();
    }

    /** By crew-day, in the order of the loads; days that the week does not hold are left out. */
    public static List<DayWeights> of(Round round, List<CrewDay> crewDays, KitPlan kit) {
        WeightCheck check = new WeightCheck(round);
        List<DayWeights> all = new ArrayList<>();
        for (CrewDayLoad load : kit.loads()) {
            crewDays.stream()
                    .filter(day -> day.crew().equals(load.crew()) && day.date().equals(load.date()))
                    .forEach(day -> all.add(check.weights(day, load)));
        }
        return List.copyOf(all);
    }

    private DayWeights weights(CrewDay day, CrewDayLoad load) {
        OptionalDouble payloadKg = store.ofKind("vehicle").stream()
                .filter(item -> item.id().equals(day.vehicle()))
                .findFirst()
                .map(item -> item.detail().payloadKg())
                .orElse(OptionalDouble.empty());
        Set<String> sites = new LinkedHashSet<>();
        day.visits().forEach(visit -> visit.site().ifPresent(sites::add));
        return new DayWeights(
                day.crew(),
                day.date(),
                day.vehicle(),
                payloadKg,
                PERSON_KG * day.people().size(),
                weighed(load, line -> true),
                sites.stream().map(site -> walk(site, day, load)).toList());
    }

    private DayWeights.Walk walk(String site, CrewDay day, CrewDayLoad load) {
        OptionalDouble walkInM = round.site(site).map(Site::walkInM).orElse(OptionalDouble.empty());
        return new DayWeights.Walk(site, walkInM, day.people().size(), weighed(load, line -> line.forSites()
                .contains(site)));
    }

    private DayWeights.Weighed weighed(CrewDayLoad load, Predicate<LoadLine> wanted) {
        double kg = 0;
        Set<String> unknown = new TreeSet<>();
        for (LoadLine line : load.lines()) {
            if (travels(line) && wanted.test(line)) {
                kg += line.kind().equals("kit-set") ? setKg(line, unknown) : lineKg(line, unknown);
            }
        }
        return new DayWeights.Weighed(kg, List.copyOf(unknown));
    }

    private static boolean travels(LoadLine line) {
        return !line.kind().equals("vehicle") && !line.container().startsWith("depot:");
    }

    private double setKg(LoadLine line, Set<String> unknown) {
        double kg = 0;
        for (StoreItem item : store.items()) {
            if (item.kitSet().filter(line.items()::contains).isPresent()) {
                kg += massKg(item, item.quantity(), unknown);
            }
        }
        return kg;
    }

    /** What of the line is not in a kit set, which was weighed with the set. */
    private double lineKg(LoadLine line, Set<String> unknown) {
        List<StoreItem> picked = store.items().stream()
                .filter(item -> line.items().contains(item.id()))
                .toList();
        double inSets = picked.stream()
                .filter(item -> item.kitSet().isPresent())
                .mapToDouble(StoreItem::quantity)
                .sum();
        double loose = Math.max(0, line.quantity() - inSets);
        Optional<StoreItem> one = line.items().isEmpty()
                ? store.ofKind(line.kind()).stream().findFirst()
                : picked.stream().filter(item -> item.kitSet().isEmpty()).findFirst();
        return loose == 0 ? 0 : one.map(item -> massKg(item, loose, unknown)).orElse(0.0);
    }

    private static double massKg(StoreItem item, double quantity, Set<String> unknown) {
        if (item.detail().massKg().isEmpty()) {
            unknown.add(item.kind().replace('-', ' '));
            return 0;
        }
        return item.detail().massKg().getAsDouble() * quantity;
    }
}
