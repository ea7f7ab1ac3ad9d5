package org.wadeplan.planner.method;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Where each element of a well-formed XML text starts and ends, character by character, so that a piece can be exchanged
 * and everything else stays byte for byte. Only for texts that {@link XmlTree} has read without complaint.
 */
final class XmlSpans {

    /**
     * One element.
     *
     * @param name without its prefix
     * @param from of its start tag
     * @param inside just behind its start tag
     * @param until just before its end tag; the same as {@code inside} where it has none
     * @param to just behind it
     */
    record Span(String name, int from, int inside, int until, int to, List<Span> children) {

        List<Span> named(String childName) {
            return children.stream()
                    .filter(child -> child.name.equals(childName))
                    .toList();
        }
    }

    private final String text;
    private int at;

    private XmlSpans(String text) {
        this.text = text;
    }

    /** An element whose end tag has not come yet. */
    private record Open(String name, int from, int inside, List<Span> children) {}

    /** The outermost element. */
    static Span of(String text) {
        return new XmlSpans(text).read();
    }

    private Span read() {
        Deque<Open> open = new ArrayDeque<>();
        open.push(new Open("", 0, 0, new ArrayList<>()));
        while (true) {
            int from = text.indexOf('<', at);
            if (from < 0) {
                return open.getLast().children().get(0);
            }
            if (!skipped(from)) {
                tag(open, from);
            }
        }
    }

    /** Comments, CDATA, instructions: none of them holds elements. */
    private boolean skipped(int from) {
        String[][] pairs = {{"<!--", "-->"}, {"<![CDATA[", "]]>"}, {"<?", "?>"}};
        for (String[] pair : pairs) {
            if (text.startsWith(pair[0], from)) {
                at = text.indexOf(pair[1], from + pair[0].length()) + pair[1].length();
                return true;
            }
        }
        return false;
    }

    private void tag(Deque<Open> open, int from) {
        int end = endOfTag(from);
        at = end + 1;
        if (text.charAt(from + 1) == '/') {
            Open closed = open.pop();
            add(open, new Span(closed.name(), closed.from(), closed.inside(), from, at, closed.children()));
        } else if (text.charAt(end - 1) == '/') {
            add(open, new Span(name(from), from, at, at, at, List.of()));
        } else {
            open.push(new Open(name(from), from, at, new ArrayList<>()));
        }
    }

    private static void add(Deque<Open> open, Span span) {
        open.getFirst().children().add(span);
    }

    /** The closing angle; one inside an attribute's quotes is none. */
    private int endOfTag(int from) {
        char quote = 0;
        for (int i = from; ; i++) {
            char next = text.charAt(i);
            if (quote != 0) {
                quote = next == quote ? 0 : quote;
            } else if (next == '"' || next == '\'') {
                quote = next;
            } else if (next == '>') {
                return i;
            }
        }
    }

    private String name(int from) {
        int end = from + 1;
        while ("/> \t\r\n".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        String whole = text.substring(from + 1, end);
        return whole.substring(whole.indexOf(':') + 1);
    }
}
