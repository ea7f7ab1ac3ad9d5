package org.wadeplan.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Takes well-known text apart into brackets; grammar as in OGC 01-009, clause 7, and ISO 19162. */
final class WktText {

    private static final int LONGEST = 100_000;
    private static final int DEEPEST = 40;

    private final String text;
    private int at;

    WktText(String text) {
        this.text = text;
    }

    Optional<WktNode> parse() {
        try {
            Optional<WktNode> root = text.length() > LONGEST ? Optional.empty() : Optional.of(node(0));
            return root.filter(node -> !node.keyword().isEmpty());
        } catch (IllegalArgumentException broken) {
            return Optional.empty();
        }
    }

    private WktNode node(int depth) {
        if (depth > DEEPEST) {
            throw new IllegalArgumentException("too deep");
        }
        skipSpace();
        if (peek() == '"') {
            return WktNode.quoted(quotedText());
        }
        String word = word();
        skipSpace();
        if (peek() != '[' && peek() != '(') {
            return new WktNode("", word, false, List.of());
        }
        at++;
        return WktNode.bracket(word.toUpperCase(Locale.ROOT), inside(depth));
    }

    private List<WktNode> inside(int depth) {
        List<WktNode> nodes = new ArrayList<>();
        while (true) {
            nodes.add(node(depth + 1));
            skipSpace();
            char next = peek();
            at++;
            if (next == ']' || next == ')') {
                return nodes;
            }
            if (next != ',') {
                throw new IllegalArgumentException("neither a comma nor the end of a bracket");
            }
        }
    }

    private String quotedText() {
        StringBuilder words = new StringBuilder();
        at++;
        while (true) {
            char letter = next();
            if (letter != '"') {
                words.append(letter);
            } else if (peek() == '"') {
                words.append('"');
                at++;
            } else {
                return words.toString();
            }
        }
    }

    private String word() {
        int from = at;
        while (at < text.length() && "[]()\",".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        String word = text.substring(from, at).strip();
        if (word.isEmpty()) {
            throw new IllegalArgumentException("nothing between two commas");
        }
        return word;
    }

    private void skipSpace() {
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == '\uFEFF')) {
            at++;
        }
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private char next() {
        if (at >= text.length()) {
            throw new IllegalArgumentException("breaks off");
        }
        return text.charAt(at++);
    }
}
