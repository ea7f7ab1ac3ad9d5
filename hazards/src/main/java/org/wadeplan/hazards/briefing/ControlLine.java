package org.wadeplan.hazards.briefing;

import org.wadeplan.hazards.register.Control;
import org.wadeplan.hazards.register.ControlLevel;

/**
 * A control with its owner.
 *
 * @param level where it stands in the hierarchy
 * @param owner name, or the role where nobody is named
 * @param role the role that owns it
 * @param text what to do
 */
public record ControlLine(ControlLevel level, String owner, String role, String text) {

    static ControlLine of(Control control, CrewRoles crew) {
        return new ControlLine(
                control.level(), crew.name(control.owner()).orElse(control.owner()), control.owner(), control.text());
    }

    /** {@code Imre: Power off before the metal.} */
    public String sentence() {
        return Character.toUpperCase(owner.charAt(0)) + owner.substring(1) + ": " + text;
    }
}
