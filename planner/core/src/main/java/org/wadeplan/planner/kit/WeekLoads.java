package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** Walks through the week day by day, handing out serials, packs and consumables, and writing down what is missing. */
final class WeekLoads {

    private static final Comparator<Shortage> SHORTAGE_ORDER = Comparator.comparing(Shortage::date)
            .thenComparing(Shortage::kind)
            .thenComparing(shortage -> String.join(",", shortage.crews()));

    private final Round round;
    private final WeekPlan week;
    private final List<VisitKit> visits;
    private final List<VisitEffort> efforts;
    private final DayNeeds dayNeeds;
    private final ItemFitness fitness;
    private final StockLedger stock;
    private final Holders holders = new Holders();
    private final FixedLines fixed;
    private final List<BathPowder.Bath> baths;
    private final List<Shortage> shortages = new ArrayList<>();
    private final List<Shortage> vehicles = new ArrayList<>();
    private final SpareNotes spareNotes;

    WeekLoads(Round round, List<VisitKit> visits, List<VisitEffort> efforts, WeekPlan week) {
        this.round = round;
        this.week = week;
        this.visits = visits;
        this.efforts = efforts;
        this.dayNeeds = new DayNeeds(round, visits);
        this.fitness = new ItemFitness(round.header().zone());
        this.stock = new StockLedger(round.store(), new Stock(round.store().items()));
        this.fixed = new FixedLines(round.store(), week);
        this.baths = BathPowder.baths(round, week);
        this.spareNotes = new SpareNotes(round.store(), fitness);
    }

    KitPlan plan() {
        SortedMap<LocalDate, List<CrewDay>> byDate = week.crewDays().stream()
                .sorted(Comparator.comparing(CrewDay::start).thenComparing(CrewDay::crew))
                .collect(Collectors.groupingBy(CrewDay::date, TreeMap::new, Collectors.toList()));
        List<CrewDayLoad> loads = new ArrayList<>();
        byDate.forEach((date, crewDays) -> loads.addAll(day(crewDays)));
        return new KitPlan(
                List.copyOf(loads),
                shortages.stream().sorted(SHORTAGE_ORDER).toList(),
                vehicles.stream().sorted(SHORTAGE_ORDER).toList(),
                spareNotes.notes(),
                stock.lines());
    }

    private List<CrewDayLoad> day(List<CrewDay> crewDays) {
        DayLines lines = new DayLines(round.store());
        crewDays.forEach(day -> {
            fixed.lines(day).forEach(line -> lines.add(day, line));
            fixed.shortage(day).ifPresent(vehicles::add);
        });
        SortedMap<String, List<DayNeed>> byKind = new TreeMap<>();
        for (CrewDay day : crewDays) {
            dayNeeds.of(day).forEach((kind, need) -> byKind.computeIfAbsent(kind, key -> new ArrayList<>())
                    .add(need));
        }
        byKind.forEach((kind, needs) -> {
            if (dayNeeds.reusable(kind)) {
                serials(needs, lines);
            } else {
                needs.forEach(need -> lines.add(need.crewDay(), consumable(need, "each")));
            }
        });
        packs(crewDays, lines);
        baths(crewDays, lines);
        return crewDays.stream()
                .sorted(Comparator.comparing(CrewDay::crew))
                .map(lines::load)
                .toList();
    }

    private void serials(List<DayNeed> needs, DayLines lines) {
        String kind = needs.get(0).kind();
        SerialPicker picker = new SerialPicker(round.store().ofKind(kind), fitness, holders);
        Picks picks = picker.needs(needs);
        Picks spares = picker.spares(needs);
        List<DayNeed> shortOf = new ArrayList<>();
        int available = 0;
        for (DayNeed need : needs) {
            List<StoreItem> picked = picks.of(need.crewDay().crew());
            List<StoreItem> spare = spares.of(need.crewDay().crew());
            available += picked.size();
            if (picked.size() < need.units()) {
                shortOf.add(need);
            }
            List<StoreItem> all = new ArrayList<>(picked);
            all.addAll(spare);
            lines.add(need.crewDay(), lines.serials(need, all, label(need, picked.size(), spare.size())));
            all.forEach(item -> holders.took(item, need.crewDay()));
        }
        if (shortOf.isEmpty()) {
            spareNotes.note(needs, spares);
        } else {
            shortages.add(ShortageWords.serials(needs, shortOf, available, obstacles(kind, shortOf.get(0))));
        }
    }

    private static String label(DayNeed need, int picked, int spares) {
        String spare = need.spareUnits() == 0 ? "" : ", " + spares + " of " + need.spareUnits() + " spare";
        String missing = picked < need.units() ? ", " + (need.units() - picked) + " missing" : "";
        return need.kind().replace('-', ' ') + spare + missing;
    }

    private List<Obstacle> obstacles(String kind, DayNeed need) {
        return round.store().ofKind(kind).stream()
                .flatMap(item -> fitness.obstacle(item, need).stream())
                .toList();
    }

    private LoadLine consumable(DayNeed need, String unitOfNone) {
        LocalDate date = need.crewDay().date();
        List<StoreItem> lots = round.store().ofKind(need.kind());
        String unit = lots.stream().map(StoreItem::unit).findFirst().orElse(unitOfNone);
        Stock.Taken taken = stock.take(need.kind(), date, need.quantity());
        if (need.quantity() - taken.quantity() > 1e-9) {
            shortages.add(ShortageWords.stock(need, need.quantity(), taken.quantity(), unit, lots));
        }
        double spare = Math.min(need.spare(), stock.left(need.kind(), date));
        String label = need.kind().replace('-', ' ')
                + (need.spare() > 0 ? ", " + ShortageWords.number(spare) + " of it spare" : "");
        return new LoadLine(
                need.container(),
                need.kind(),
                label,
                taken.quantity() + spare,
                unit,
                List.of(),
                taken.validUntil(),
                need.sites());
    }

    private void packs(List<CrewDay> crewDays, DayLines lines) {
        List<StoreItem> fit = round.store().ofKind(DayNeeds.BATTERY_PACK).stream()
                .filter(item -> crewDays.stream()
                        .allMatch(day -> fitness.obstacle(item, FixedLines.packNeed(day, List.of()))
                                        .isEmpty()
                                && !holders.outWithOther(item, day)))
                .toList();
        BatteryPicker picker = new BatteryPicker(round.store(), fit);
        for (CrewDay day : crewDays) {
            for (BatteryPicker.Packed packed : picker.of(day, visits, efforts)) {
                DayNeed need = FixedLines.packNeed(day, List.of(packed.site()));
                lines.add(day, lines.serials(need, packed.packs(), packed.words()));
                packed.packs().forEach(pack -> holders.took(pack, day));
                if (packed.packs().size() < packed.needed()) {
                    shortages.add(packShortage(day, packed));
                }
            }
        }
    }

    private static Shortage packShortage(CrewDay day, BatteryPicker.Packed packed) {
        int missing = packed.needed() - packed.packs().size();
        return new Shortage(
                day.date(),
                List.of(day.crew()),
                DayNeeds.BATTERY_PACK,
                packed.needed(),
                packed.packs().size(),
                packed.site() + " needs " + packed.needed() + " packs: " + packed.words(),
                "borrow or hire " + missing + ", or move one of the day's electrofishing visits");
    }

    private void baths(List<CrewDay> crewDays, DayLines lines) {
        for (CrewDay day : crewDays) {
            Map<String, DayNeed> needs = fixed.bathNeeds(day, baths);
            needs.values().forEach(need -> lines.add(day, consumable(need, "kg")));
        }
    }
}
