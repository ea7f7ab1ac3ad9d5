package org.wadeplan.desktop.app;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.planner.round.LowWater;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.light.DayLight;

/** Sun and tide of each day of a round, from the planner's own reckoning. */
final class Skies {

    private Skies() {}

    static List<DaySky> of(Round round) {
        Optional<LonLat> middle = middle(round);
        return round.header().allDays().stream()
                .map(day -> middle.map(place -> sky(round, place, day)).orElseGet(() -> DaySky.unknown(day)))
                .toList();
    }

    /** The depot where there are no sites. */
    private static Optional<LonLat> middle(Round round) {
        List<MetricPoint> places =
                new ArrayList<>(round.sites().stream().map(Site::start).toList());
        if (places.isEmpty()) {
            places.add(round.header().depot().at());
        }
        double east = places.stream().mapToDouble(MetricPoint::eastM).average().orElse(0);
        double north =
                places.stream().mapToDouble(MetricPoint::northM).average().orElse(0);
        try {
            return Optional.of(round.terrain().crs().toLonLat(new MetricPoint(east, north)));
        } catch (IllegalArgumentException offTheGlobe) {
            return Optional.empty();
        }
    }

    private static DaySky sky(Round round, LonLat place, LocalDate day) {
        RoundHeader header = round.header();
        DayLight light = DayLight.at(place, day, header.zone());
        return new DaySky(
                day,
                light.civilDawn(),
                light.sunset(),
                light.sunset().map(set -> set.plusSeconds(60L * header.light().darkAfterSunsetMin())),
                windows(round, day));
    }

    private static List<DaySky.LowWaterWindow> windows(Round round, LocalDate day) {
        ZoneId zone = round.header().zone();
        Instant from = day.atStartOfDay(zone).toInstant();
        Instant until = day.plusDays(1).atTime(LocalTime.of(5, 0)).atZone(zone).toInstant();
        List<DaySky.LowWaterWindow> windows = new ArrayList<>();
        for (LowWater low : round.tides()) {
            Instant opens = low.at().minusSeconds(60L * round.header().tide().beforeLowMin());
            Instant closes = low.at().plusSeconds(60L * round.header().tide().afterLowMin());
            if (closes.isAfter(from) && opens.isBefore(until)) {
                windows.add(new DaySky.LowWaterWindow(low.place(), opens, low.at(), closes));
            }
        }
        return List.copyOf(windows);
    }
}
