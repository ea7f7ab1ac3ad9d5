package org.wadeplan.planner.method;

import java.util.List;
import java.util.Optional;

/**
 * One output column.
 *
 * @param id the file's id, blank where it gives none
 * @param name {@code method}, say; blank where a table has one output and does not name it
 * @param type empty where the file does not say
 * @param values the output values that the file lists, first the one that goes before the others; none where it lists none
 */
public record TableOutput(String id, String name, Optional<ValueType> type, List<String> values) {}
