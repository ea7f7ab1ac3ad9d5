package org.wadeplan.geo.reach;

/** True left and true right: as seen looking downstream. */
public enum Bank {
    LEFT,
    RIGHT
}
