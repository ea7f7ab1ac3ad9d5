package org.wadeplan.hazards.briefing;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Who does what today.
 *
 * @param nameByRole name by role as the register's controls use it: leader, operator, netter, bank watcher, driver, first
 *     aider, office
 */
public record CrewRoles(SortedMap<String, String> nameByRole) {

    /** Whose control nobody in particular owns. */
    static final String EVERYONE = "everyone";

    public CrewRoles {
        nameByRole = Collections.unmodifiableSortedMap(new TreeMap<>(nameByRole));
    }

    public static CrewRoles of(Map<String, String> nameByRole) {
        return new CrewRoles(new TreeMap<>(nameByRole));
    }

    public Optional<String> name(String role) {
        return Optional.ofNullable(nameByRole.get(role)).filter(name -> !name.isBlank());
    }

    boolean missing(String role) {
        return !role.equals(EVERYONE) && name(role).isEmpty();
    }
}
