package org.wadeplan.planner.decon.ledger;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Treatment;

/** Whether an item bears the cleaning that the kit set it rode with gets. A backpack unit is never put into a bath. */
final class GearOnFile {

    private GearOnFile() {}

    /** Why a cleaning counts for nothing on an item; empty where the item's gear class bears all of it. */
    static Optional<String> bars(Round round, StoreItem item, Treated cleaning) {
        Optional<GearClass> gear = item.detail().gearClass().flatMap(id -> round.biosecurity().gear().stream()
                .filter(one -> one.id().equals(id))
                .findFirst());
        if (gear.isEmpty()) {
            return Optional.of("whether it may be immersed is not on file: give it a gear_class in store.csv");
        }
        if (gear.get().immersion() != Immersion.WHOLE) {
            return Optional.of("it must not go into a bath (" + gear.get().label()
                    + "): wipe it by a row of treatments that says so");
        }
        return cleaning.credits().stream()
                .map(credit -> credit.cover().treatment())
                .distinct()
                .flatMap(treatment -> rows(round, treatment).stream())
                .flatMap(row -> harm(gear.get(), row).stream())
                .findFirst();
    }

    private static List<Treatment> rows(Round round, String treatment) {
        return round.biosecurity().treatments().stream()
                .filter(row -> row.id().equals(treatment))
                .toList();
    }

    private static Optional<String> harm(GearClass gear, Treatment row) {
        String agent = row.agent().toLowerCase(Locale.ROOT);
        boolean harmful = gear.harmedBy().stream().anyMatch(word -> agent.contains(word.toLowerCase(Locale.ROOT)));
        boolean tooHot = row.tempC().isPresent()
                && gear.maxTempC().isPresent()
                && row.tempC().getAsDouble() > gear.maxTempC().getAsDouble();
        return harmful || tooHot ? Optional.of(row.id() + " would harm it (" + gear.label() + ")") : Optional.empty();
    }
}
