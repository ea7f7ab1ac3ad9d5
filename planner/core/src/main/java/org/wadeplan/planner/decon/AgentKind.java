package org.wadeplan.planner.decon;

import org.wadeplan.planner.round.Treatment;

/** How an agent works, which decides the steps around it. */
public enum AgentKind {
    /** Hot water with nothing in it. */
    HEAT("heat"),
    /** Anything that must be rinsed off, hot or cold. */
    CHEMICAL("chemical"),
    /** Runs alone in a freezer. */
    FREEZE("freeze"),
    /** Runs alone on a rack. */
    DRY("dry");

    private final String word;

    AgentKind(String word) {
        this.word = word;
    }

    /** The word that the steps table uses in its {@code when} column. */
    public String word() {
        return word;
    }

    /** True where nobody is busy while it works. */
    public boolean runsAlone() {
        return this == FREEZE || this == DRY;
    }

    static AgentKind of(Treatment row) {
        return switch (row.mode()) {
            case FREEZE -> FREEZE;
            case DRY -> DRY;
            case SOAK, SPRAY, WIPE, STEAM ->
                row.tempC().isPresent() && row.strength().isEmpty() ? HEAT : CHEMICAL;
        };
    }
}
