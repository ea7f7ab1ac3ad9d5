package org.wadeplan.planner.method;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Writes the cells of a table into the DMN file that it came from. Rules are matched by their ids; what does not differ
 * stays byte for byte: ids, annotations, layout, comments, what other programs keep in the file.
 */
public final class DmnEdit {

    /** Text to put in the place of a stretch of the file. */
    private record Change(int from, int to, String text) {}

    private final String file;
    private final DecisionTable before;
    private final DecisionTable after;
    private final List<XmlSpans.Span> rules;
    private final List<Change> changes = new ArrayList<>();

    private DmnEdit(String file, DecisionTable before, DecisionTable after) {
        this.file = file;
        this.before = before;
        this.after = after;
        this.rules = table(XmlSpans.of(file)).orElseThrow().named("rule");
    }

    /**
     * The file with the cells of another table.
     *
     * @param original bytes of a DMN file in UTF-8 without errors
     * @param before the table as read from it
     * @param after the table to be written; its inputs and outputs must have the names of the file's, in their order
     * @throws IllegalArgumentException where {@link #sameFrame} does not hold, or a rule of the file could not be read
     */
    public static byte[] written(byte[] original, DecisionTable before, DecisionTable after) {
        DmnEdit edit = new DmnEdit(new String(original, StandardCharsets.UTF_8), before, after);
        if (!sameFrame(before, after) || edit.rules.size() != before.rules().size()) {
            throw new IllegalArgumentException("The two tables differ in more than their rules");
        }
        return edit.apply().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Whether two tables have the same columns, ranges and hit policy, and the rules that both have in the same order with
     * new ones at the end, so that only cells and whole rules differ.
     */
    public static boolean sameFrame(DecisionTable before, DecisionTable after) {
        List<String> known = before.rules().stream().map(TableRule::id).toList();
        List<Integer> places = after.rules().stream()
                .map(rule -> known.contains(rule.id()) ? known.indexOf(rule.id()) : known.size())
                .toList();
        return before.hitPolicy() == after.hitPolicy()
                && inputs(before).equals(inputs(after))
                && outputs(before).equals(outputs(after))
                && places.equals(places.stream().sorted().toList());
    }

    private static List<Object> inputs(DecisionTable table) {
        return table.inputs().stream()
                .<Object>map(input ->
                        List.of(input.name(), input.type(), input.allowed().map(TableCell::test)))
                .toList();
    }

    private static List<Object> outputs(DecisionTable table) {
        return table.outputs().stream()
                .<Object>map(output -> List.of(output.name(), output.values()))
                .toList();
    }

    private static Optional<XmlSpans.Span> table(XmlSpans.Span span) {
        if (span.name().equals("decisionTable")) {
            return Optional.of(span);
        }
        return span.children().stream().flatMap(child -> table(child).stream()).findFirst();
    }

    private String apply() {
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < before.rules().size(); i++) {
            places.put(before.rules().get(i).id(), i);
        }
        Set<Integer> kept = new HashSet<>();
        StringBuilder added = new StringBuilder();
        for (TableRule rule : after.rules()) {
            Integer place = places.get(rule.id());
            if (place == null) {
                added.append(indent()).append(DmnWriter.rule(after, rule, indent()));
            } else {
                kept.add(place);
                rule(place, rule);
            }
        }
        for (int i = 0; i < rules.size(); i++) {
            if (!kept.contains(i)) {
                changes.add(new Change(
                        startOfLine(rules.get(i).from()), rules.get(i).to(), ""));
            }
        }
        int end = rules.get(rules.size() - 1).to();
        changes.add(new Change(end, end, added.toString()));
        return changed();
    }

    private void rule(int place, TableRule rule) {
        TableRule old = before.rules().get(place);
        List<XmlSpans.Span> inputs = rules.get(place).named("inputEntry");
        for (int column = 0; column < rule.cells().size(); column++) {
            TableCell cell = rule.cells().get(column);
            if (!cell.test().equals(old.cells().get(column).test())) {
                cell(inputs.get(column), cell.text());
            }
        }
        List<XmlSpans.Span> outputs = rules.get(place).named("outputEntry");
        for (int column = 0; column < rule.outputs().size(); column++) {
            if (!rule.outputs().get(column).equals(old.outputs().get(column))) {
                cell(
                        outputs.get(column),
                        DmnWriter.output(
                                after.outputs().get(column), rule.outputs().get(column)));
            }
        }
        annotation(place, old, rule);
    }

    private void annotation(int place, TableRule old, TableRule rule) {
        if (rule.annotation().equals(old.annotation())) {
            return;
        }
        List<XmlSpans.Span> description = rules.get(place).named("description");
        List<XmlSpans.Span> entries = rules.get(place).named("annotationEntry");
        if (entries.size() == 1) {
            cell(entries.get(0), rule.annotation());
        } else if (description.size() == 1) {
            replace(description.get(0), DmnWriter.escaped(rule.annotation()));
        }
    }

    private void cell(XmlSpans.Span entry, String text) {
        replace(entry.named("text").get(0), DmnWriter.escaped(text));
    }

    private void replace(XmlSpans.Span span, String text) {
        boolean closed = span.until() == span.to();
        changes.add(
                closed
                        ? new Change(span.from(), span.to(), reopened(span, text))
                        : new Change(span.inside(), span.until(), text));
    }

    /** {@code <text/>} becomes {@code <text>-</text>}. */
    private String reopened(XmlSpans.Span span, String text) {
        String tag = file.substring(span.from(), span.to()).replaceAll("\\s*/>$", ">");
        String name = tag.substring(1).split("[\\s>]", 2)[0];
        return tag + text + "</" + name + ">";
    }

    /** The line break and blanks before a rule. */
    private String indent() {
        int from = rules.get(0).from();
        return file.substring(startOfLine(from), from);
    }

    private int startOfLine(int from) {
        int start = from;
        while (start > 0 && Character.isWhitespace(file.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private String changed() {
        StringBuilder text = new StringBuilder();
        int at = 0;
        for (Change change : changes.stream()
                .sorted(Comparator.comparingInt(Change::from).thenComparingInt(Change::to))
                .toList()) {
            text.append(file, at, change.from()).append(change.text());
            at = change.to();
        }
        return text.append(file, at, file.length()).toString();
    }
}
