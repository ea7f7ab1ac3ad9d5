package org.wadeplan.hazards.register;

import java.util.Locale;

/** What people do on a visit that can hurt them. A method is a set of these; the register knows no methods. */
public enum Activity implements Keyed {
    WADING,
    ELECTRIC_CURRENT,
    NETS,
    NIGHT,
    LONE,
    TIDAL,
    REMOTE,
    DRIVING,
    CHEMICALS,
    FISH_HANDLING,
    BOAT,
    DECONTAMINATION;

    @Override
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
