package org.wadeplan.desktop.app;

/** What only the window itself can do. */
public interface WindowActs {

    /** The keyboard goes to the next pane, or with -1 to the one before. */
    void cyclePane(int by);

    void toggleHelp();

    void quit();
}
