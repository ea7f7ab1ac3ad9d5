package org.wadeplan.planner.pack.page;

/** A finished PDF. */
public final class PressedPdf {

    private final byte[] content;
    private final int pages;

    PressedPdf(byte[] content, int pages) {
        this.content = content.clone();
        this.pages = pages;
    }

    /** The whole file. */
    public byte[] bytes() {
        return content.clone();
    }

    public int pages() {
        return pages;
    }
}
