package org.wadeplan.planner.permission;

import java.util.ArrayList;
import java.util.List;

/** What one permit or consent says, while it is being read: lists that only grow. */
record Findings(List<String> blocks, List<String> awaiting, List<String> conditions) {

    Findings() {
        this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    }

    void addAll(Findings other) {
        blocks.addAll(other.blocks);
        awaiting.addAll(other.awaiting);
        conditions.addAll(other.conditions);
    }

    /** 0 free, 1 something is awaited, 2 blocked: the permit with the lowest is the one to rely on. */
    int severity() {
        if (!blocks.isEmpty()) {
            return 2;
        }
        return awaiting.isEmpty() ? 0 : 1;
    }
}
