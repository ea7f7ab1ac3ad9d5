package org.wadeplan.geo.network;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The repairs that a person has agreed to, by their ids: {@code reverse:OUN}, {@code join-gap:HSK},
 * {@code drop-spike:TOL}; or all of one kind, for files with very many: {@code join-gap:*}.
 *
 * @param ids as problems offer them; upper and lower case do not matter
 */
public record AcceptedRepairs(Set<String> ids) {

    public static final AcceptedRepairs NONE = new AcceptedRepairs(Set.of());

    public AcceptedRepairs {
        ids = ids.stream().map(AcceptedRepairs::tidy).collect(Collectors.toUnmodifiableSet());
    }

    public static AcceptedRepairs of(String... ids) {
        return new AcceptedRepairs(Set.of(ids));
    }

    public boolean accepts(String id) {
        return ids.contains(tidy(id)) || ids.contains(allOfItsKind(id));
    }

    private static String allOfItsKind(String id) {
        String tidy = tidy(id);
        return tidy.substring(0, Math.max(0, tidy.indexOf(':'))) + ":*";
    }

    /** The ids that no problem offers, sorted: probably misspelt. */
    public Set<String> notAmong(Set<String> offered) {
        Set<String> strangers = new TreeSet<>(ids);
        offered.forEach(id -> {
            strangers.remove(tidy(id));
            strangers.remove(allOfItsKind(id));
        });
        return strangers;
    }

    private static String tidy(String id) {
        return id.strip().toLowerCase(Locale.ROOT);
    }
}
