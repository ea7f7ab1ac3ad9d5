package org.wadeplan.planner.decon.drying;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.planner.round.DayForecast;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;

/**
 * Estimates drying through the round's forecast, day by day, in still air. An item without a gear class counts as the slowest
 * class of its material that the round knows; hard items without one dry fast and are left out.
 */
public final class DryingForecast {

    private static final int MOST_DAYS = 30;

    private final Round round;
    private final ZoneId zone;

    public DryingForecast(Round round) {
        this.round = round;
        this.zone = round.header().zone();
    }

    private record Gear(String name, GearClass of) {}

    /**
     * When a kit set or an item that stands for itself may be dry to the touch.
     *
     * @param wetUntil when it was last wet
     */
    public DryEstimate of(KitSet kit, Instant wetUntil) {
        List<Gear> gear = gear(kit);
        if (gear.isEmpty()) {
            return new DryEstimate("nothing", Optional.empty(), "no gear class says how much water it holds");
        }
        Gear slowest = gear.stream()
                .max(Comparator.comparingDouble(
                        one -> DryToTouch.loadGM2(one.of()).orElse(0)))
                .orElseThrow();
        return estimate(slowest, wetUntil);
    }

    private List<Gear> gear(KitSet kit) {
        List<Gear> gear = new ArrayList<>();
        for (StoreItem item : round.store().items()) {
            boolean itsOwn = item.kitSet().filter(kit.id()::equals).isPresent()
                    || item.id().equals(kit.id());
            if (itsOwn) {
                known(item).or(() -> slowestOf(item.material())).ifPresent(gear::add);
            }
        }
        return gear;
    }

    private Optional<Gear> known(StoreItem item) {
        return item.detail().gearClass().flatMap(id -> round.biosecurity().gear().stream()
                .filter(gear -> gear.id().equals(id) && DryToTouch.loadGM2(gear).isPresent())
                .map(gear -> new Gear(gear.label(), gear))
                .findFirst());
    }

    private Optional<Gear> slowestOf(Material material) {
        return round.biosecurity().gear().stream()
                .filter(gear ->
                        gear.material() == material && DryToTouch.loadGM2(gear).isPresent())
                .max(Comparator.comparingDouble(gear -> DryToTouch.loadGM2(gear).orElse(0)))
                .map(gear -> new Gear(gear.label() + " (the slowest of its material; no gear class on file)", gear));
    }

    private DryEstimate estimate(Gear gear, Instant wetUntil) {
        double left = DryToTouch.loadGM2(gear.of()).orElse(0);
        Instant clock = wetUntil;
        for (int day = 0; day < MOST_DAYS; day++) {
            LocalDate date = clock.atZone(zone).toLocalDate();
            Instant midnight = date.plusDays(1).atStartOfDay(zone).toInstant();
            OptionalDouble rate = rateOn(date);
            if (rate.isEmpty()) {
                return new DryEstimate(
                        gear.name(), Optional.empty(), "forecast.csv has no temperatures and humidity for " + date);
            }
            double hours = Duration.between(clock, midnight).toSeconds() / 3600.0;
            if (left <= rate.getAsDouble() * hours) {
                long seconds = Math.round(left / rate.getAsDouble() * 3600);
                return new DryEstimate(
                        gear.name(), Optional.of(clock.plusSeconds(seconds)), "by the forecast, in still air");
            }
            left -= rate.getAsDouble() * hours;
            clock = midnight;
        }
        return new DryEstimate(gear.name(), Optional.empty(), "not within " + MOST_DAYS + " days of that weather");
    }

    private OptionalDouble rateOn(LocalDate date) {
        for (DayForecast day : round.forecast()) {
            boolean known = day.airTempMinC().isPresent()
                    && day.airTempMaxC().isPresent()
                    && day.humidityPct().isPresent();
            if (day.date().equals(date) && known) {
                double meanC =
                        (day.airTempMinC().getAsDouble() + day.airTempMaxC().getAsDouble()) / 2;
                return OptionalDouble.of(
                        DryToTouch.evaporationGM2H(meanC, day.humidityPct().getAsDouble(), DryToTouch.STILL_AIR_MS));
            }
        }
        return OptionalDouble.empty();
    }
}
