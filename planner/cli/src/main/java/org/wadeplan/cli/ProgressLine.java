package org.wadeplan.cli;

import org.wadeplan.planner.week.Progress;

/** Shows on standard error how far long work has come, at most once a tenth. */
final class ProgressLine implements Progress {

    private final Console console;
    private String lastShown = "";

    ProgressLine(Console console) {
        this.console = console;
    }

    @Override
    public void report(int done, int of, String words) {
        String text = of > 0 ? words + " " + 10 * (10 * done / of) + " %" : words;
        if (!text.equals(lastShown)) {
            lastShown = text;
            console.progress(text);
        }
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }
}
