package org.wadeplan.cli;

import org.wadeplan.planner.week.Progress;

/** Shows on standard error which step is being worked on, and for long ones each tenth once. */
final class ProgressLine implements Progress {

    private final Console console;
    private String step = "";
    private int tenth = -1;

    ProgressLine(Console console) {
        this.console = console;
    }

    @Override
    public void report(int done, int of, String words) {
        boolean newStep = !words.equals(step);
        int reached = of > 0 ? (int) (10L * done / of) : 0;
        if (newStep || reached > tenth) {
            step = words;
            tenth = reached;
            console.progress(of > 0 ? words + ", " + 10 * reached + " %" : words);
        }
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }
}
