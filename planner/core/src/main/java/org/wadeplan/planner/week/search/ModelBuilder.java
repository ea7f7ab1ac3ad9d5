package org.wadeplan.planner.week.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WaterPest.PestStatus;
import org.wadeplan.planner.week.Travel;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WindowFinder;

/** Turns a round and the steps before into the whole numbers that the search works on. */
final class ModelBuilder {

    private final WeekInputs inputs;
    private final Round round;
    private final MinuteAxis axis;
    private final WindowFinder windows;

    ModelBuilder(WeekInputs inputs) {
        this.inputs = inputs;
        this.round = inputs.round();
        this.axis = MinuteAxis.from(round.header().firstDay(), round.header().zone());
        this.windows = new WindowFinder(round);
    }

    WeekModel build() {
        List<LocalDate> dates = round.header().allDays();
        List<CrewDayRoster> roster = round.roster().stream()
                .filter(day -> dates.contains(day.date()))
                .sorted(Comparator.comparing(CrewDayRoster::date).thenComparing(CrewDayRoster::crew))
                .toList();
        List<String> people = distinct(roster.stream().flatMap(day -> day.people().stream()));
        List<String> vehicles = distinct(roster.stream().map(CrewDayRoster::vehicle));
        List<String> crews = distinct(roster.stream().map(CrewDayRoster::crew));
        List<Slot> slots = new SlotBuilder(round, axis, windows, dates, people, vehicles, crews).build(roster);
        List<String> places = Stream.concat(
                        round.sites().stream().map(Site::id),
                        Stream.of(round.header().depot().id()))
                .toList();
        List<CertifiedKind> kinds = kinds();
        JobBuilder jobs = new JobBuilder(inputs, windows, axis, new JobBuilder.Frame(dates, slots, places, kinds));
        jobs.build();
        return new WeekModel(
                round,
                axis,
                dates,
                slots,
                jobs.stops(),
                jobs.jobs(),
                jobs.never(),
                places,
                drives(places),
                round.waters(),
                infested(),
                round.store().kitSets(),
                new TreatmentBuilder(inputs).build(),
                round.biosecurity().resources(),
                kinds,
                new PackBook(inputs, jobs.stops()),
                rinseMin(),
                people.size(),
                vehicles.size(),
                crews.size());
    }

    private static List<String> distinct(Stream<String> words) {
        return List.copyOf(new TreeSet<>(words.toList()));
    }

    private int[][] drives(List<String> places) {
        Travel travel = new Travel(round);
        int[][] minutes = new int[places.size()][places.size()];
        for (int from = 0; from < places.size(); from++) {
            for (int to = 0; to < places.size(); to++) {
                minutes[from][to] =
                        travel.between(places.get(from), places.get(to)).minutes();
            }
        }
        return minutes;
    }

    private boolean[] infested() {
        boolean[] infested = new boolean[round.waters().size()];
        for (int i = 0; i < infested.length; i++) {
            Water water = round.waters().get(i);
            infested[i] = round.biosecurity().waterPests().stream()
                    .anyMatch(pest -> pest.water().equals(water.id()) && pest.status() != PestStatus.FREE);
        }
        return infested;
    }

    private int rinseMin() {
        return round.biosecurity().steps().stream()
                .filter(rule -> rule.when().equals("same-water"))
                .mapToInt(DeconStepRule::minutes)
                .sum();
    }

    /** Kinds for which some method asks a certificate, with the serials in service that have one of that name at all. */
    private List<CertifiedKind> kinds() {
        Set<String> seen = new TreeSet<>();
        List<CertifiedKind> kinds = new ArrayList<>();
        for (KitNeed need : round.store().needs()) {
            String certificate = need.certificate().orElse("");
            if (!certificate.isEmpty() && seen.add(need.kind() + " " + certificate)) {
                List<StoreItem> items = round.store().ofKind(need.kind()).stream()
                        .filter(item -> item.state() != StoreState.OUT_OF_SERVICE)
                        .filter(item -> item.certificates().stream()
                                .map(ItemCertificate::certificate)
                                .anyMatch(certificate::equals))
                        .toList();
                kinds.add(new CertifiedKind(need.kind(), certificate, items));
            }
        }
        return List.copyOf(kinds);
    }
}
