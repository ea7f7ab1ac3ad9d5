package org.wadeplan.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * One bracket of well-known text: a keyword and what stands inside, in order.
 *
 * @param keyword in capital letters; empty for a bare value
 * @param text what the value is, without its quotes; empty for a bracket
 * @param quoted whether the value stood in quotes
 * @param inside empty for a bare value
 */
record WktNode(String keyword, String text, boolean quoted, List<WktNode> inside) {

    WktNode {
        inside = List.copyOf(inside);
    }

    static WktNode bracket(String keyword, List<WktNode> inside) {
        return new WktNode(keyword, "", false, inside);
    }

    static WktNode quoted(String text) {
        return new WktNode("", text, true, List.of());
    }

    static WktNode number(double value) {
        return new WktNode("", Double.toString(value), false, List.of());
    }

    /** The text as a tree; empty where it is not well-known text. */
    static Optional<WktNode> parse(String text) {
        return new WktText(text).parse();
    }

    boolean is(String... keywords) {
        return List.of(keywords).contains(keyword);
    }

    /** The first text in quotes inside: what the thing is called. */
    String name() {
        return inside.stream()
                .filter(WktNode::quoted)
                .map(WktNode::text)
                .findFirst()
                .orElse("");
    }

    /** The first bracket inside with one of these keywords. */
    Optional<WktNode> child(String... keywords) {
        return inside.stream().filter(node -> node.is(keywords)).findFirst();
    }

    List<WktNode> children(String... keywords) {
        return inside.stream().filter(node -> node.is(keywords)).toList();
    }

    /** The n-th bare number inside, counted from 0. */
    OptionalDouble numberAt(int n) {
        List<Double> numbers = new ArrayList<>();
        for (WktNode node : inside) {
            if (node.keyword.isEmpty() && !node.quoted) {
                asNumber(node.text).ifPresent(numbers::add);
            }
        }
        return n < numbers.size() ? OptionalDouble.of(numbers.get(n)) : OptionalDouble.empty();
    }

    private static Optional<Double> asNumber(String text) {
        try {
            return Optional.of(Double.parseDouble(text));
        } catch (NumberFormatException word) {
            return Optional.empty();
        }
    }

    /** {@code EPSG:32627} where the bracket carries EPSG's code for itself. */
    Optional<String> epsgCode() {
        return child("AUTHORITY", "ID")
                .filter(id -> id.name().equalsIgnoreCase("EPSG"))
                .map(id -> id.inside().get(id.inside().size() > 1 ? 1 : 0).text())
                .filter(code -> code.matches("\\d{4,6}"))
                .map(code -> "EPSG:" + code);
    }

    /** The same without brackets of these keywords, at any depth. */
    WktNode without(String... keywords) {
        return new WktNode(
                keyword,
                text,
                quoted,
                inside.stream()
                        .filter(node -> !node.is(keywords))
                        .map(node -> node.without(keywords))
                        .toList());
    }

    /** The same with one more bracket at its end. */
    WktNode with(WktNode more) {
        List<WktNode> all = new ArrayList<>(inside);
        all.add(more);
        return new WktNode(keyword, text, quoted, all);
    }

    /** The same with every bracket of the replacement's keyword replaced by it. */
    WktNode replacing(WktNode by) {
        return new WktNode(
                keyword,
                text,
                quoted,
                inside.stream().map(node -> node.is(by.keyword) ? by : node).toList());
    }

    /** As well-known text on one line. */
    String written() {
        if (!keyword.isEmpty()) {
            return keyword + inside.stream().map(WktNode::written).collect(Collectors.joining(",", "[", "]"));
        }
        return quoted ? "\"" + text.replace("\"", "\"\"") + "\"" : text.toUpperCase(Locale.ROOT);
    }
}
