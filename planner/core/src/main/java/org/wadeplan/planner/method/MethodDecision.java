package org.wadeplan.planner.method;

import java.util.Optional;

/**
 * What the decision table says of one site.
 *
 * @param site site code
 * @param table name of the table
 * @param tableHash SHA-256 of the table's file
 */
public record MethodDecision(String site, MethodOutcome outcome, String table, String tableHash) {

    /** The method where exactly one rule matched. */
    public Optional<MethodOutcome.Chosen> chosen() {
        return outcome.fold(
                Optional::of, undecided -> Optional.empty(), noRule -> Optional.empty(), clash -> Optional.empty());
    }
}
