package org.wadeplan.planner.round;

import java.util.List;

/**
 * A method that the decision table may name.
 *
 * @param id as the decision table writes it: {@code EFISH}
 * @param label as people say it
 * @param parts in order; empty where the method means no visit
 */
public record Method(String id, String label, MethodKind kind, List<MethodPart> parts, String source) {}
