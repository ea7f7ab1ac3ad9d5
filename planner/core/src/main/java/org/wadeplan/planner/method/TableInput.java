package org.wadeplan.planner.method;

import java.util.Optional;

/**
 * One input column.
 *
 * @param id the file's id, blank where it gives none
 * @param name the name of the value that it looks at: {@code conductivity_us_cm}
 * @param label what the column is headed, the name where the file gives none
 * @param allowed the values that the table is meant for; empty where it does not say
 */
public record TableInput(String id, String name, String label, ValueType type, Optional<TableCell> allowed) {}
