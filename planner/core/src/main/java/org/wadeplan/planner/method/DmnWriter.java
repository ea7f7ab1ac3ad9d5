package org.wadeplan.planner.method;

import java.util.Optional;

/** Writes a decision table as a DMN 1.3 file of its own. */
public final class DmnWriter {

    private static final String NAMESPACE = "https://www.omg.org/spec/DMN/20191111/MODEL/";

    private DmnWriter() {}

    /** The file's text; reading it gives the same cells, ids and annotations. */
    public static String text(DecisionTable table) {
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        String name = quoted(table.name());
        text.append("<definitions xmlns=\"" + NAMESPACE + "\" id=\"definitions\" name=\"" + name
                + "\" namespace=\"urn:wadeplan:table\">\n");
        for (TableInput input : table.inputs()) {
            text.append("  <inputData name=\"" + quoted(input.name()) + "\"><variable name=\"" + quoted(input.name())
                    + "\" typeRef=\"" + input.type().word() + "\"/></inputData>\n");
        }
        text.append("  <decision id=\"" + quoted(table.id().isEmpty() ? "decision" : table.id()) + "\" name=\"" + name
                + "\">\n");
        text.append("    <variable name=\"" + name + "\"/>\n");
        text.append("    <decisionTable id=\"table\" hitPolicy=\""
                + table.hitPolicy().word() + "\">\n");
        for (int column = 0; column < table.inputs().size(); column++) {
            text.append(input(table.inputs().get(column), "input-" + (column + 1)));
        }
        for (int column = 0; column < table.outputs().size(); column++) {
            text.append(output(table.outputs().get(column), "output-" + (column + 1)));
        }
        table.rules().forEach(rule -> text.append("      ")
                .append(rule(table, rule, "\n      "))
                .append("\n"));
        return text.append("    </decisionTable>\n  </decision>\n</definitions>\n")
                .toString();
    }

    /** One rule, its lines after the first led by the indent. */
    static String rule(DecisionTable table, TableRule rule, String indent) {
        StringBuilder text =
                new StringBuilder("<rule" + attribute("id", rule.id().replace(' ', '-')) + ">");
        if (!rule.annotation().isEmpty()) {
            text.append(indent + "  <description>" + escaped(rule.annotation()) + "</description>");
        }
        rule.cells()
                .forEach(cell -> text.append(indent + "  <inputEntry><text>"
                        + escaped(cell.text().isEmpty() ? "-" : cell.text()) + "</text></inputEntry>"));
        for (int column = 0; column < rule.outputs().size(); column++) {
            String cell = output(table.outputs().get(column), rule.outputs().get(column));
            text.append(indent + "  <outputEntry><text>" + escaped(cell) + "</text></outputEntry>");
        }
        return text.append(indent + "</rule>").toString();
    }

    /** An output as a cell writes it. */
    static String output(TableOutput output, Optional<String> value) {
        boolean text = output.type().map(type -> type == ValueType.TEXT).orElseGet(() -> value.flatMap(Literals::one)
                .isEmpty());
        return value.map(given -> text ? CellText.of(CaseValue.of(given)) : given)
                .orElse("null");
    }

    private static String input(TableInput input, String id) {
        String allowed = input.allowed()
                .map(cell -> "        <inputValues><text>" + escaped(cell.text()) + "</text></inputValues>\n")
                .orElse("");
        return "      <input" + attribute("id", input.id().isEmpty() ? id : input.id())
                + attribute("label", input.label()) + ">\n"
                + "        <inputExpression typeRef=\"" + input.type().word() + "\"><text>" + escaped(input.name())
                + "</text></inputExpression>\n" + allowed + "      </input>\n";
    }

    private static String output(TableOutput output, String id) {
        StringBuilder values = new StringBuilder();
        output.values().forEach(value -> values.append(values.length() == 0 ? "" : ",")
                .append(output(output, Optional.of(value))));
        String type = output.type().map(ValueType::word).orElse("");
        String head = "      <output" + attribute("id", output.id().isEmpty() ? id : output.id())
                + attribute("name", output.name()) + attribute("typeRef", type);
        return values.length() == 0
                ? head + "/>\n"
                : head + "><outputValues><text>" + escaped(values.toString()) + "</text></outputValues></output>\n";
    }

    private static String attribute(String name, String value) {
        return value.isEmpty() ? "" : " " + name + "=\"" + quoted(value) + "\"";
    }

    private static String quoted(String value) {
        return escaped(value).replace("\"", "&quot;");
    }

    /** As text between tags. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
