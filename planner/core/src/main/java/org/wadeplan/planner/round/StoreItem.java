package org.wadeplan.planner.round;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A line of the store: one serial, or a quantity of a consumable.
 *
 * @param kind word that kit needs ask for
 * @param quantity how many or how much, in {@code unit}
 * @param healthPct of a battery pack: what is left of its capacity as new
 */
public record StoreItem(
        String id,
        String kind,
        String label,
        double quantity,
        String unit,
        Optional<String> kitSet,
        Material material,
        StoreState state,
        Optional<String> stateNote,
        Optional<Instant> availableFrom,
        Optional<Instant> availableUntil,
        Optional<LocalDate> expires,
        OptionalDouble healthPct,
        List<ItemCertificate> certificates,
        ItemDetail detail) {

    /** An item of which the store says no more. */
    public StoreItem(
            String id,
            String kind,
            String label,
            double quantity,
            String unit,
            Optional<String> kitSet,
            Material material,
            StoreState state,
            Optional<String> stateNote,
            Optional<Instant> availableFrom,
            Optional<Instant> availableUntil,
            Optional<LocalDate> expires,
            OptionalDouble healthPct,
            List<ItemCertificate> certificates) {
        this(
                id,
                kind,
                label,
                quantity,
                unit,
                kitSet,
                material,
                state,
                stateNote,
                availableFrom,
                availableUntil,
                expires,
                healthPct,
                certificates,
                ItemDetail.NONE);
    }

    /** The same item with these certificates. */
    public StoreItem with(List<ItemCertificate> itsCertificates) {
        return new StoreItem(
                id,
                kind,
                label,
                quantity,
                unit,
                kitSet,
                material,
                state,
                stateNote,
                availableFrom,
                availableUntil,
                expires,
                healthPct,
                itsCertificates,
                detail);
    }
}
