package org.wadeplan.planner.week.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** Whether the vehicle of a crew-day may be on the road that day. */
public final class VehicleFitness {

    private VehicleFitness() {}

    /** What stands against it, each in a sentence; empty where nothing was found. */
    public static List<String> lacks(Round round, CrewDayRoster roster) {
        Optional<StoreItem> vehicle = round.store().items().stream()
                .filter(item -> item.id().equals(roster.vehicle()))
                .findFirst();
        if (vehicle.isEmpty()) {
            return List.of("vehicle " + roster.vehicle() + " of crew " + roster.crew() + " on " + roster.date()
                    + " is not in the store.");
        }
        List<String> lacks = new ArrayList<>();
        if (vehicle.get().state() == StoreState.OUT_OF_SERVICE) {
            lacks.add("vehicle " + roster.vehicle() + " is out of service.");
        }
        for (ItemCertificate certificate : vehicle.get().certificates()) {
            if (!certificate.validOn(roster.date())) {
                lacks.add("vehicle " + roster.vehicle() + ": " + certificate.certificate() + " counts until "
                        + certificate.validUntil() + ", not on " + roster.date() + ".");
            }
        }
        return lacks;
    }
}
