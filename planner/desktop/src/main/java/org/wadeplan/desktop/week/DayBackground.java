package org.wadeplan.desktop.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;

/** Night and tide behind a day. */
record DayBackground(DaySky sky, DayClock clock, int toMin, boolean tidal) {

    List<DayBand.Shade> shades() {
        List<DayBand.Shade> shades = new ArrayList<>();
        sky.civilDawn()
                .ifPresent(dawn -> shades.add(new DayBand.Shade(
                        DayBand.ShadeKind.NIGHT, 0, clock.minutes(dawn), Words.of("week.beforeDawn"))));
        Optional<Integer> sunset = sky.sunset().map(clock::minutes);
        Optional<Integer> dark = sky.darkFrom().map(clock::minutes);
        if (sunset.isPresent() && dark.isPresent()) {
            shades.add(new DayBand.Shade(DayBand.ShadeKind.DUSK, sunset.get(), dark.get(), Words.of("week.dusk")));
            shades.add(new DayBand.Shade(DayBand.ShadeKind.NIGHT, dark.get(), toMin, Words.of("week.night")));
        }
        if (tidal) {
            for (DaySky.LowWaterWindow window : sky.lowWaters()) {
                shades.add(new DayBand.Shade(
                        DayBand.ShadeKind.LOW_WATER,
                        clock.minutes(window.from()),
                        clock.minutes(window.until()),
                        Words.of("week.lowWater", window.place(), Times.clock(window.low(), clock.zone()))));
            }
        }
        return List.copyOf(shades);
    }

    /** For the day's head: {@code light from 06:25, sunset 19:48, dark from 20:33}. */
    String words() {
        List<String> parts = new ArrayList<>();
        sky.civilDawn().ifPresent(at -> parts.add(Words.of("week.lightFrom", Times.clock(at, clock.zone()))));
        sky.sunset().ifPresent(at -> parts.add(Words.of("week.sunset", Times.clock(at, clock.zone()))));
        sky.darkFrom().ifPresent(at -> parts.add(Words.of("week.darkFrom", Times.clock(at, clock.zone()))));
        if (tidal) {
            sky.lowWaters()
                    .forEach(window -> parts.add(
                            Words.of("week.lowWater", window.place(), Times.dayClock(window.low(), clock.zone()))));
        }
        return String.join(", ", parts);
    }
}
