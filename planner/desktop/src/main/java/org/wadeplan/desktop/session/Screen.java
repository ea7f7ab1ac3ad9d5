package org.wadeplan.desktop.session;

/** The pages of the window, in working order. */
public enum Screen {
    MAP,
    WEEK,
    PROBLEMS,
    PACK,
    KIT,
    CLEANING
}
