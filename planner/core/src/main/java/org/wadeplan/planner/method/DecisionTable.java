package org.wadeplan.planner.method;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A decision table, parsed: the shape of DMN, with each input cell as an exact {@link UnaryTest}.
 *
 * @param file name of the file it was read from, for messages
 * @param id the file's id for the decision, blank where it gives none
 * @param name what the table is called
 * @param inputs in the order of the columns
 * @param outputs in the order of the columns
 * @param rules in the order of the rows
 * @param hash SHA-256 of the file it was read from, 64 hexadecimal characters
 */
public record DecisionTable(
        String file,
        String id,
        String name,
        HitPolicy hitPolicy,
        List<TableInput> inputs,
        List<TableOutput> outputs,
        List<TableRule> rules,
        String hash) {

    /** The output that names the method. */
    public static final String METHOD_OUTPUT = "method";

    /** The output that gives the smallest crew. */
    public static final String CREW_OUTPUT = "crew_min";

    public DecisionTable {
        for (TableRule rule : rules) {
            if (rule.cells().size() != inputs.size() || rule.outputs().size() != outputs.size()) {
                throw new IllegalArgumentException("Rule " + rule.number() + " of " + name + " has the wrong width");
            }
        }
    }

    /** Where the method stands among the outputs: the column {@code method}, or the only column there is. */
    public OptionalInt methodColumn() {
        OptionalInt named = outputColumn(METHOD_OUTPUT);
        return named.isEmpty() && outputs.size() == 1 ? OptionalInt.of(0) : named;
    }

    /** Where an output of that name stands; empty where there is none. */
    public OptionalInt outputColumn(String outputName) {
        for (int column = 0; column < outputs.size(); column++) {
            if (outputs.get(column).name().equals(outputName)) {
                return OptionalInt.of(column);
            }
        }
        return OptionalInt.empty();
    }

    /** The same table under another hit policy. */
    public DecisionTable under(HitPolicy policy) {
        return new DecisionTable(file, id, name, policy, inputs, outputs, rules, hash);
    }

    /** Rules in the order in which they answer: that of the output values where the hit policy goes by them, else that given. */
    public List<TableRule> inOrder(List<TableRule> matching) {
        return hitPolicy.byOutputValues()
                ? matching.stream().sorted(this::compareOutputs).toList()
                : matching;
    }

    /** Output by output from the left, by the list of its values; what is not listed comes last. */
    public int compareOutputs(TableRule a, TableRule b) {
        for (int column = 0; column < outputs.size(); column++) {
            int order = Integer.compare(place(a, column), place(b, column));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    private int place(TableRule rule, int column) {
        List<String> values = outputs.get(column).values();
        int found = rule.outputs().get(column).map(values::indexOf).orElse(-1);
        return found < 0 ? values.size() : found;
    }

    public Optional<TableInput> input(String inputName) {
        return inputs.stream().filter(input -> input.name().equals(inputName)).findFirst();
    }

    public Optional<TableRule> rule(int number) {
        return rules.stream().filter(rule -> rule.number() == number).findFirst();
    }
}
