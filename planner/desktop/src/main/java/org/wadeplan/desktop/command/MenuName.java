package org.wadeplan.desktop.command;

/** The menus, in their order. Their words stand in the bundle under {@code menu.}. */
public enum MenuName {
    ROUND,
    EDIT,
    SHOW,
    PICTURE,
    DAY,
    HELP
}
