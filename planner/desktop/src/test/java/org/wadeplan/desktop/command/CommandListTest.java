package org.wadeplan.desktop.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import org.junit.jupiter.api.Test;

class CommandListTest {

    private static AppCommand command(String id, Shortcut shortcut) {
        return new AppCommand(id, MenuName.ROUND, id, Optional.of(shortcut), new SimpleBooleanProperty(true), () -> {});
    }

    @Test
    void twoCommandsCannotShareAShortcut() {
        assertThatThrownBy(() -> new CommandList(
                        List.of(command("one", Shortcut.control("O")), command("two", Shortcut.control("O")))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one and two");
    }

    @Test
    void shortcutsAreWrittenAsPeopleSayThem() {
        assertThat(Shortcut.control("O").words()).isEqualTo("Ctrl+O");
        assertThat(Shortcut.control("DIGIT1").words()).isEqualTo("Ctrl+1");
        assertThat(Shortcut.plain("ESCAPE").words()).isEqualTo("Esc");
        assertThat(Shortcut.shift("F6").words()).isEqualTo("Shift+F6");
        assertThat(Shortcut.plain("PLUS").words()).isEqualTo("+");
    }

    @Test
    void onlyBareLettersAndSignsAreTyped() {
        assertThat(Shortcut.plain("N").typed()).isTrue();
        assertThat(Shortcut.plain("PLUS").typed()).isTrue();
        assertThat(Shortcut.plain("F5").typed()).isFalse();
        assertThat(Shortcut.control("P").typed()).isFalse();
    }

    @Test
    void aDisabledCommandDoesNothing() {
        int[] ran = {0};
        SimpleBooleanProperty enabled = new SimpleBooleanProperty(false);
        AppCommand command = new AppCommand("one", MenuName.EDIT, "One", Optional.empty(), enabled, () -> ran[0]++);
        command.run();
        enabled.set(true);
        command.run();
        assertThat(ran[0]).isEqualTo(1);
    }
}
