package org.wadeplan.desktop.session;

import java.util.Optional;

/**
 * What is selected, on every screen at once.
 *
 * @param site a site's id
 * @param bar a bar of the week, by its id; its site is then the selected one too, where it has one
 */
public record Selection(Optional<String> site, Optional<String> bar) {

    public static final Selection NOTHING = new Selection(Optional.empty(), Optional.empty());

    public static Selection site(String id) {
        return new Selection(Optional.of(id), Optional.empty());
    }
}
