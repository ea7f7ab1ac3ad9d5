package org.wadeplan.cli;

import org.wadeplan.planner.plan.Progress;

/** Shows on standard error how far long work has come, at most once a tenth. */
final class ProgressLine implements Progress {

    private final Console console;
    private String lastShown = "";

    ProgressLine(Console console) {
        this.console = console;
    }

    @Override
    public void at(String step, double share) {
        String text = step + " " + Math.round(share * 10) * 10 + " %";
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
