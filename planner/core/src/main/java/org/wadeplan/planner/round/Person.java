package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * Someone who goes out, by the facts that decide what they may do. A certificate counts up to and including its day.
 *
 * @param roles words such as {@code operator}, {@code netter}, {@code bucket}, {@code check-in}
 * @param liveCircuit false where the person may not work with a live circuit; the reason is nobody's business here
 */
public record Person(
        String id,
        String name,
        Set<String> roles,
        Optional<LocalDate> operatorUntil,
        Optional<LocalDate> firstAidUntil,
        boolean liveCircuit,
        boolean driver,
        boolean nightDriver,
        Optional<String> note) {

    public boolean firstAiderOn(LocalDate day) {
        return firstAidUntil.map(until -> !day.isAfter(until)).orElse(false);
    }

    public boolean operatorOn(LocalDate day) {
        return liveCircuit
                && roles.contains("operator")
                && operatorUntil.map(until -> !day.isAfter(until)).orElse(false);
    }

    /** An operator may always net; a netter may not operate. */
    public boolean netter() {
        return liveCircuit && (roles.contains("netter") || roles.contains("operator"));
    }
}
