package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;

/** What the template of a whole book is filled from. */
record BookView(String title, String style, List<Leaf> leaves) {

    /**
     * A section with the words of its running head and foot, quoted for a style sheet.
     *
     * @param anchor name of the section inside the document and of its kind of page
     */
    record Leaf(
            String anchor,
            String title,
            String headLeft,
            String headRight,
            String footLeft,
            String footRight,
            String html) {}

    static BookView of(Book book) {
        List<Leaf> leaves = new ArrayList<>();
        for (Section section : book.sections()) {
            String mark = section.authorised() ? "" : "NOT AUTHORISED · ";
            leaves.add(new Leaf(
                    "s" + leaves.size(),
                    section.subject() + " – " + section.title(),
                    quoted(section.title()),
                    quoted(mark + section.subject()),
                    quoted(book.footer()),
                    quoted(book.madeAtWords()),
                    section.html()));
        }
        return new BookView(book.title(), Templates.text("style.css"), List.copyOf(leaves));
    }

    /** Inside a style sheet's string, within a CDATA section: a backslash, a quote or an end mark would break out. */
    private static String quoted(String words) {
        return words.replace("\\", "\\\\")
                .replace("\"", "\\\"")
                .replace("<", "\\3c ")
                .replace("\n", " ");
    }
}
