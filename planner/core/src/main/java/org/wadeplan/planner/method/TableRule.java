package org.wadeplan.planner.method;

import java.util.List;
import java.util.Optional;

/**
 * One rule: a row of the table.
 *
 * @param number from 1, as printed
 * @param id the file's id, {@code rule 5} where it gives none
 * @param cells one for each input, in the order of the inputs
 * @param outputs one for each output, in their order: the literal without its quotation marks; empty where the rule gives
 *     none
 * @param annotation what the author wrote beside it, blank where nothing
 */
public record TableRule(
        int number, String id, List<TableCell> cells, List<Optional<String>> outputs, String annotation) {}
