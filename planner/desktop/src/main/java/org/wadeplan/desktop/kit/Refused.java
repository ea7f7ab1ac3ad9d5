package org.wadeplan.desktop.kit;

import java.util.List;
import org.wadeplan.desktop.session.LoadLineKey;

/** A tick that was refused, with every reason, until it is let go by name or something else is done. */
public record Refused(LoadLineKey line, String what, List<String> reasons) {}
