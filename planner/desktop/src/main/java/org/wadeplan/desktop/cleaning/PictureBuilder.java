package org.wadeplan.desktop.cleaning;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.decon.schedule.BenchPlace;
import org.wadeplan.planner.decon.schedule.BenchStep;
import org.wadeplan.planner.decon.schedule.BenchTask;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** The picture of the kit sets from the week in force. */
final class PictureBuilder {

    private final CleaningWeek cleaning;
    private final WeekPlan week;
    private final ZoneId zone;

    private PictureBuilder(CleaningWeek cleaning) {
        this.cleaning = cleaning;
        this.week = cleaning.week();
        this.zone = cleaning.round().header().zone();
    }

    /** Empty where nobody works. */
    static Optional<CleaningPicture> picture(CleaningWeek week, List<DaySky> skies, Optional<FindReport> find) {
        if (week.week().crewDays().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PictureBuilder(week)
                .build(skies, find.map(FindReport::flagged).orElse(Map.of())));
    }

    private CleaningPicture build(List<DaySky> skies, Map<String, FindReport.Flag> flagged) {
        LocalDate first = week.crewDays().stream()
                .map(CrewDay::date)
                .min(LocalDate::compareTo)
                .orElseThrow();
        Instant last = Stream.concat(
                        week.crewDays().stream().map(CrewDay::end),
                        week.decon().stream().map(DeconTask::released))
                .max(Instant::compareTo)
                .orElseThrow();
        Instant from = first.atStartOfDay(zone).toInstant();
        Instant to =
                LocalDate.ofInstant(last, zone).plusDays(1).atStartOfDay(zone).toInstant();
        List<SetLane> lanes = new SetLanes(cleaning.round(), from, to).of(cleaning.ledger(), flagged);
        return new CleaningPicture(from, to, zone, nights(skies, from, to), lanes, benches());
    }

    private static List<CleaningPicture.Night> nights(List<DaySky> skies, Instant from, Instant to) {
        List<CleaningPicture.Night> nights = new ArrayList<>();
        for (DaySky sky : skies) {
            Optional<Instant> dark = sky.darkFrom().filter(at -> at.isBefore(to));
            Optional<Instant> light = dark.flatMap(at -> sky.civilDawn().map(dawn -> dawn.plus(Duration.ofDays(1))));
            if (dark.isPresent() && light.isPresent() && light.get().isAfter(from)) {
                nights.add(new CleaningPicture.Night(dark.get(), light.get()));
            }
        }
        return List.copyOf(nights);
    }

    /** Every place in which something soaks or freezes, in the order of the round's resources. */
    private List<BenchLane> benches() {
        Map<String, List<BenchLane.Turn>> turns = new TreeMap<>();
        Map<String, BenchPlace> places = new TreeMap<>();
        for (BenchTask task : cleaning.baths().bench().tasks()) {
            for (BenchStep step : task.steps()) {
                step.place().filter(place -> CleaningWeek.contact(step.step())).ifPresent(place -> {
                    places.put(key(place), place);
                    turns.computeIfAbsent(key(place), none -> new ArrayList<>()).add(turn(task, step, place));
                });
            }
        }
        turns.values().forEach(of -> of.sort(Comparator.comparing(BenchLane.Turn::from)));
        return places.entrySet().stream()
                .map(entry -> new BenchLane(label(entry.getValue()), List.copyOf(turns.get(entry.getKey()))))
                .toList();
    }

    private String key(BenchPlace place) {
        List<String> order = cleaning.round().biosecurity().resources().stream()
                .map(DeconResource::id)
                .toList();
        return String.format(Locale.ROOT, "%03d %03d", order.indexOf(place.resource()), place.number());
    }

    private static String label(BenchPlace place) {
        return place.of() == 1 ? place.label() : place.label() + " " + place.number();
    }

    private BenchLane.Turn turn(BenchTask task, BenchStep step, BenchPlace place) {
        String spoken = Words.of(
                "cleaning.benchSpoken",
                place.words(),
                task.kitSet(),
                Times.dayClock(step.start(), zone),
                Times.clock(step.end(), zone));
        return new BenchLane.Turn(task.kitSet(), step.start(), step.end(), spoken);
    }
}
