package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** Whether the vehicle of a crew-day may be on the road that day. */
final class VehicleCheck {

    private final Store store;
    private final WeekPlan week;

    VehicleCheck(Store store, WeekPlan week) {
        this.store = store;
        this.week = week;
    }

    Optional<StoreItem> vehicle(CrewDay day) {
        return store.ofKind("vehicle").stream()
                .filter(item -> item.id().equals(day.vehicle()))
                .findFirst();
    }

    Optional<Shortage> shortage(CrewDay day) {
        Optional<StoreItem> vehicle = vehicle(day);
        if (vehicle.isEmpty()) {
            return Optional.of(shortage(day, "vehicle " + day.vehicle() + " is not in the store"));
        }
        return fault(vehicle.get(), day.date()).map(found -> shortage(day, found));
    }

    private static Optional<String> fault(StoreItem vehicle, LocalDate date) {
        if (vehicle.state() == StoreState.OUT_OF_SERVICE) {
            return Optional.of(vehicle.id() + " is out of service");
        }
        return vehicle.certificates().stream()
                .map(ItemCertificate::certificate)
                .distinct()
                .flatMap(name -> ItemFitness.certificate(vehicle, name, date).stream())
                .map(Obstacle::found)
                .findFirst();
    }

    private Shortage shortage(CrewDay day, String found) {
        String renew = "have its certificate renewed before " + day.date();
        String remedy = freeVehicle(day)
                .map(other -> "take " + other.id() + ", which is free all that crew-day")
                .or(() -> lateVehicle(day))
                .map(way -> way + "; or " + renew)
                .orElse(renew + "; or hire one");
        return new Shortage(day.date(), List.of(day.crew()), "vehicle", 1, 0, found, remedy);
    }

    private Optional<StoreItem> freeVehicle(CrewDay day) {
        return sound(day).filter(item -> users(item, day).isEmpty()).findFirst();
    }

    private Optional<String> lateVehicle(CrewDay day) {
        return sound(day)
                .findFirst()
                .map(item -> "share " + item.id() + " with crew "
                        + users(item, day).get(0).crew() + ", which has it that day, and move the start");
    }

    private Stream<StoreItem> sound(CrewDay day) {
        return store.ofKind("vehicle").stream()
                .filter(item -> !item.id().equals(day.vehicle())
                        && fault(item, day.date()).isEmpty());
    }

    private List<CrewDay> users(StoreItem item, CrewDay day) {
        return week.crewDays().stream()
                .filter(other -> !other.equals(day)
                        && other.vehicle().equals(item.id())
                        && other.start().isBefore(day.end())
                        && day.start().isBefore(other.end()))
                .toList();
    }
}
