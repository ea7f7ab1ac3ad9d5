package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One line to tick while loading.
 *
 * @param container what it travels in
 * @param items serials that were picked, in store order; empty for a bulk quantity
 * @param validUntil the earliest certificate end among them
 * @param forSites the sites that ask for it
 */
public record LoadLine(
        String container,
        String kind,
        String label,
        double quantity,
        String unit,
        List<String> items,
        Optional<LocalDate> validUntil,
        List<String> forSites) {}
