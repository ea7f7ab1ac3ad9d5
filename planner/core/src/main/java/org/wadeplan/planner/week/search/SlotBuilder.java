package org.wadeplan.planner.week.search;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Place;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WindowFinder;
import org.wadeplan.planner.week.light.DayLight;
import org.wadeplan.planner.week.rule.VehicleFitness;

/** Turns roster lines into slots: hours, people, vehicle, and when nobody or only a night driver may drive. */
record SlotBuilder(
        Round round,
        MinuteAxis axis,
        WindowFinder windows,
        List<LocalDate> dates,
        List<String> people,
        List<String> vehicles,
        List<String> crews) {

    List<Slot> build(List<CrewDayRoster> roster) {
        List<Slot> slots = new ArrayList<>();
        for (CrewDayRoster day : roster) {
            slots.add(slot(slots.size(), day));
        }
        return List.copyOf(slots);
    }

    private Slot slot(int index, CrewDayRoster day) {
        DutyRules duty = round.header().duty();
        LocalTime earliest = day.earliestStart()
                .filter(time -> time.isAfter(duty.earliestStart()))
                .orElse(duty.earliestStart());
        return new Slot(
                index,
                day,
                dates.indexOf(day.date()),
                round.header().reserveDays().contains(day.date()),
                axis.minute(day.date(), earliest),
                latestEnd(day, earliest),
                day.people().stream().mapToInt(people::indexOf).toArray(),
                livePeople(day),
                vehicles.indexOf(day.vehicle()),
                crews.indexOf(day.crew()),
                noDriving(day.date(), duty),
                hasNightDriver(day) ? new int[0] : darkness(day.date()),
                VehicleFitness.lacks(round, day));
    }

    private int livePeople(CrewDayRoster day) {
        return (int) day.people().stream()
                .map(round::person)
                .flatMap(Optional::stream)
                .filter(Person::liveCircuit)
                .count();
    }

    private int latestEnd(CrewDayRoster day, LocalTime earliest) {
        if (day.latestEnd().isEmpty()) {
            return Integer.MAX_VALUE;
        }
        LocalTime end = day.latestEnd().get();
        LocalDate date = end.isAfter(earliest) ? day.date() : day.date().plusDays(1);
        return axis.minute(date, end);
    }

    private int[] noDriving(LocalDate date, DutyRules duty) {
        if (duty.noDrivingFrom().equals(duty.noDrivingUntil())) {
            return new int[0];
        }
        boolean overMidnight = duty.noDrivingUntil().isBefore(duty.noDrivingFrom());
        int[] barred = new int[6];
        for (int i = 0; i < 3; i++) {
            LocalDate from = date.plusDays(i - 1);
            barred[2 * i] = axis.minute(from, duty.noDrivingFrom());
            barred[2 * i + 1] = axis.minute(overMidnight ? from.plusDays(1) : from, duty.noDrivingUntil());
        }
        return barred;
    }

    private boolean hasNightDriver(CrewDayRoster day) {
        return day.people().stream()
                .map(round::person)
                .flatMap(Optional::stream)
                .anyMatch(person -> person.driver() && person.nightDriver());
    }

    /** From civil dusk to civil dawn at the depot. Where the Sun knows neither, the whole date or nothing. */
    private int[] darkness(LocalDate date) {
        List<Integer> dark = new ArrayList<>();
        for (int i = -1; i <= 1; i++) {
            LocalDate evening = date.plusDays(i);
            DayLight sun = at(evening);
            DayLight next = at(evening.plusDays(1));
            int midnight = axis.minute(evening.plusDays(1), LocalTime.MIDNIGHT);
            if (sun.course() == DayLight.Course.NEVER_RISES) {
                dark.add(axis.minute(evening, LocalTime.MIDNIGHT));
                dark.add(midnight);
            } else if (sun.civilDusk().isPresent()) {
                dark.add(axis.minute(sun.civilDusk().get()));
                dark.add(next.civilDawn().map(axis::minute).orElse(midnight));
            }
        }
        return dark.stream().mapToInt(Integer::intValue).toArray();
    }

    private DayLight at(LocalDate date) {
        Place depot = round.header().depot();
        return DayLight.at(
                round.terrain().crs().toLonLat(depot.at()), date, round.header().zone());
    }
}
