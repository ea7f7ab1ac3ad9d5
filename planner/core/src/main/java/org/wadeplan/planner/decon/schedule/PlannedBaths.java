package org.wadeplan.planner.decon.schedule;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.planner.decon.BathAmount;
import org.wadeplan.planner.decon.BathTarget;
import org.wadeplan.planner.decon.HotBath;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.Round;

/**
 * Every bath of a bench plan: one for each tub, target and day, because a used bath is tipped out at the end of its day
 * (default of our own; labels and strips come first).
 */
final class PlannedBaths {

    private final Round round;
    private final ZoneId zone;

    private record Key(LocalDate day, String resource, int number, String target) {}

    private record Soak(BenchTask task, BenchStep step, BenchPlace place) {}

    private PlannedBaths(Round round) {
        this.round = round;
        this.zone = round.header().zone();
    }

    /** By when they must be ready. */
    static List<PlannedBath> of(Round round, List<BenchTask> tasks) {
        PlannedBaths baths = new PlannedBaths(round);
        Map<Key, List<Soak>> soaks = new LinkedHashMap<>();
        for (BenchTask task : tasks) {
            for (BenchStep step : task.steps()) {
                if (step.step().equals("soak") && step.place().isPresent()) {
                    BenchPlace place = step.place().get();
                    Key key = new Key(
                            task.day(),
                            place.resource(),
                            place.number(),
                            step.target().orElse(""));
                    soaks.computeIfAbsent(key, none -> new ArrayList<>()).add(new Soak(task, step, place));
                }
            }
        }
        return soaks.entrySet().stream()
                .map(one -> baths.bath(one.getKey(), one.getValue()))
                .sorted(Comparator.comparing(PlannedBath::readyBy)
                        .thenComparing(bath -> bath.place().words()))
                .toList();
    }

    private PlannedBath bath(Key key, List<Soak> soaks) {
        List<PlannedBath.Use> uses = soaks.stream()
                .map(soak -> new PlannedBath.Use(
                        soak.task().kitSet(),
                        soak.task().crew(),
                        soak.step().start(),
                        soak.step().end()))
                .sorted(Comparator.comparing(PlannedBath.Use::in).thenComparing(PlannedBath.Use::kitSet))
                .toList();
        Optional<DeconResource> tub = tub(key.resource());
        OptionalDouble volumeL = tub.map(DeconResource::volumeL).orElse(OptionalDouble.empty());
        BathTarget target = BathTarget.of(key.target());
        int contactMin =
                soaks.stream().mapToInt(soak -> soak.step().minutes()).max().orElse(0);
        PlannedBath.Use first = uses.get(0);
        return new PlannedBath(
                key.day(),
                soaks.get(0).place(),
                tub.flatMap(DeconResource::agent),
                key.target(),
                volumeL,
                amount(target, tub, volumeL),
                start(target, contactMin, true),
                start(target, contactMin, false),
                first.crew(),
                first.in(),
                discardBy(key.day(), uses),
                uses);
    }

    private Optional<DeconResource> tub(String id) {
        return round.biosecurity().resources().stream()
                .filter(one -> one.id().equals(id))
                .findFirst();
    }

    /** The strength that the evidence asks for; the tub's own where the step names none. */
    private static Optional<BathAmount> amount(BathTarget target, Optional<DeconResource> tub, OptionalDouble volumeL) {
        if (volumeL.isEmpty()) {
            return Optional.empty();
        }
        if (target.strength().isPresent()) {
            return BathAmount.of(target.strength().getAsDouble(), target.basis().orElse(""), volumeL.getAsDouble());
        }
        OptionalDouble own = tub.map(DeconResource::strengthGL).orElse(OptionalDouble.empty());
        return own.isPresent()
                ? BathAmount.of(own.getAsDouble(), "g/L product", volumeL.getAsDouble())
                : Optional.empty();
    }

    private static OptionalInt start(BathTarget target, int contactMin, boolean lidded) {
        return target.hot()
                ? HotBath.startTempC(target.tempC().getAsDouble(), contactMin, lidded)
                : OptionalInt.empty();
    }

    /** Midnight after the crew-day, or the last set out where that is later. */
    private Instant discardBy(LocalDate day, List<PlannedBath.Use> uses) {
        Instant midnight = day.plusDays(1).atStartOfDay(zone).toInstant();
        Instant lastOut = uses.stream()
                .map(PlannedBath.Use::out)
                .max(Comparator.naturalOrder())
                .orElse(midnight);
        return lastOut.isAfter(midnight) ? lastOut : midnight;
    }
}
