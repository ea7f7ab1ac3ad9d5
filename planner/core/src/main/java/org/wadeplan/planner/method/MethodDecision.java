package org.wadeplan.planner.method;

import java.util.Optional;

/**
 * What the decision table says of one site.
 *
 * @param site site code
 * @param table name of the table
 * @param outcome where a person has decided otherwise, that decision as a choice by rule 0
 * @param tableHash SHA-256 of the table's file
 * @param overridden empty where the table decides
 */
public record MethodDecision(
        String site, MethodOutcome outcome, String table, String tableHash, Optional<Overridden> overridden) {

    /**
     * What a person put in the place of the table's answer.
     *
     * @param reason printed wherever the method is
     * @param tableSays the table's own answer, in words
     */
    public record Overridden(String reason, String tableSays) {}

    /** A decision by the table. */
    public MethodDecision(String site, MethodOutcome outcome, String table, String tableHash) {
        this(site, outcome, table, tableHash, Optional.empty());
    }

    /** The method where exactly one rule matched. */
    public Optional<MethodOutcome.Chosen> chosen() {
        return outcome.fold(
                Optional::of, undecided -> Optional.empty(), noRule -> Optional.empty(), clash -> Optional.empty());
    }
}
