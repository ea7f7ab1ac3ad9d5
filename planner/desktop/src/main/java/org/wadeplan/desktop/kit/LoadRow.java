package org.wadeplan.desktop.kit;

import org.wadeplan.desktop.look.Mark;

/**
 * A line of the load list, everything in words; or the head of a container.
 *
 * @param id the container's name for a head, otherwise container and item
 * @param item serial or kit set; the kind, for what is counted out and has no serial
 * @param box whether there is something to tick, and whether it is ticked
 * @param state what is known of it now, with the reason where it may not go
 */
public record LoadRow(
        String id,
        String item,
        Box box,
        String serial,
        String what,
        String quantity,
        String validTo,
        Mark mark,
        String state,
        String sites) {

    /** What stands at the left of a line. */
    public enum Box {
        HEAD,
        OPEN,
        TICKED,
        /** Nothing is there to be loaded. */
        NONE
    }

    public boolean tickable() {
        return box == Box.OPEN || box == Box.TICKED;
    }
}
