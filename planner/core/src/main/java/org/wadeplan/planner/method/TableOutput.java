package org.wadeplan.planner.method;

import java.util.Optional;

/**
 * One output column.
 *
 * @param id the file's id, blank where it gives none
 * @param name {@code method}, say; blank where a table has one output and does not name it
 * @param type empty where the file does not say
 */
public record TableOutput(String id, String name, Optional<ValueType> type) {}
