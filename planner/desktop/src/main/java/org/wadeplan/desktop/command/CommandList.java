package org.wadeplan.desktop.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All commands, in the order of the menus. */
public record CommandList(List<AppCommand> all) {

    public CommandList {
        all = List.copyOf(all);
        Map<Object, AppCommand> seen = new LinkedHashMap<>();
        for (AppCommand command : all) {
            refuseTwice(seen.put(command.id(), command), command);
            command.shortcut().ifPresent(shortcut -> refuseTwice(seen.put(shortcut, command), command));
        }
    }

    private static void refuseTwice(@org.jspecify.annotations.Nullable AppCommand earlier, AppCommand command) {
        if (earlier != null) {
            throw new IllegalArgumentException(earlier.id() + " and " + command.id() + " share an id or a shortcut");
        }
    }

    public List<AppCommand> in(MenuName menu) {
        return all.stream().filter(command -> command.menu() == menu).toList();
    }

    /**
     * The command of that id.
     *
     * @throws IllegalArgumentException where there is none
     */
    public AppCommand named(String id) {
        return all.stream()
                .filter(command -> command.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No command is called " + id));
    }
}
