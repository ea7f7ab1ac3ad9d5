package org.wadeplan.cli;

import org.wadeplan.geo.search.SearchWatch;

/** Shows on standard error how far a search for reaches is. */
final class SearchProgress implements SearchWatch {

    private final ProgressLine line;

    SearchProgress(Console console) {
        this.line = new ProgressLine(console);
    }

    @Override
    public void report(String step, int done, int of) {
        line.report(done, of, step);
    }

    @Override
    public boolean cancelled() {
        return line.cancelled();
    }
}
