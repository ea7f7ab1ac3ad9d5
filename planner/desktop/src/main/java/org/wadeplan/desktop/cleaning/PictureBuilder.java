package org.wadeplan.desktop.cleaning;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.session.WeekInForce;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** The picture of the kit sets from the week in force. */
final class PictureBuilder {

    private final Round round;
    private final WeekPlan week;
    private final Map<String, String> flagged;
    private final ZoneId zone;

    private PictureBuilder(Round round, WeekPlan week, Map<String, String> flagged) {
        this.round = round;
        this.week = week;
        this.flagged = flagged;
        this.zone = round.header().zone();
    }

    /** Empty where nobody works. */
    static Optional<CleaningPicture> picture(
            Round round, WeekInForce inForce, List<DaySky> skies, Optional<FindReport> find) {
        if (inForce.week().crewDays().isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> flagged = find.map(FindReport::flagged).orElse(Map.of());
        return Optional.of(new PictureBuilder(round, inForce.week(), flagged).build(skies));
    }

    private CleaningPicture build(List<DaySky> skies) {
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
        List<SetLane> lanes =
                round.store().kitSets().stream().map(set -> lane(set, from, to)).toList();
        return new CleaningPicture(from, to, zone, nights(skies, from, to), lanes, benches());
    }

    private SetLane lane(KitSet set, Instant from, Instant to) {
        String purpose = Words.of("purpose." + set.purpose().name());
        Optional<String> flag = Optional.ofNullable(flagged.get(set.id()));
        return new SetLane(set.id(), purpose, flag, new SetStory(round, week, set, flag).spans(from, to));
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

    /** Where a soak needs a bath or bay: as many lines for it as kit sets lie in it at once. */
    private List<BenchLane> benches() {
        List<BenchLane> lanes = new ArrayList<>();
        for (DeconResource resource : round.biosecurity().resources()) {
            List<List<BenchLane.Turn>> places = new ArrayList<>();
            turns(resource).forEach(turn -> placeFor(turn, places).add(turn));
            for (int i = 0; i < places.size(); i++) {
                boolean tooMany = i >= resource.capacityKitSets();
                lanes.add(new BenchLane(resource.label(), tooMany, List.copyOf(places.get(i))));
            }
        }
        return List.copyOf(lanes);
    }

    private List<BenchLane.Turn> turns(DeconResource resource) {
        List<BenchLane.Turn> turns = new ArrayList<>();
        for (DeconTask task : week.decon()) {
            Instant start = task.start();
            for (DeconStep step : task.steps()) {
                Instant end = start.plus(Duration.ofMinutes(step.minutes()));
                if (contact(step)
                        && step.resource().filter(resource.id()::equals).isPresent()) {
                    turns.add(new BenchLane.Turn(
                            task.kitSet(), CleaningTasks.id(task), start, end, spoken(resource, task, start, end)));
                }
                start = end;
            }
        }
        turns.sort(Comparator.comparing(BenchLane.Turn::from).thenComparing(BenchLane.Turn::kitSet));
        return turns;
    }

    private String spoken(DeconResource resource, DeconTask task, Instant start, Instant end) {
        return Words.of(
                "cleaning.benchSpoken",
                resource.label(),
                task.kitSet(),
                Times.dayClock(start, zone),
                Times.clock(end, zone));
    }

    private static List<BenchLane.Turn> placeFor(BenchLane.Turn turn, List<List<BenchLane.Turn>> places) {
        for (List<BenchLane.Turn> place : places) {
            if (!place.get(place.size() - 1).to().isAfter(turn.from())) {
                return place;
            }
        }
        List<BenchLane.Turn> more = new ArrayList<>();
        places.add(more);
        return more;
    }

    /** A step whose minutes count only while the whole of it is in contact with what treats it. */
    static boolean contact(DeconStep step) {
        return step.step().equals("soak") || step.step().equals("freeze");
    }
}
