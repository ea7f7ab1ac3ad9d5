package org.wadeplan.desktop.cleaning;

import java.util.Locale;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.decon.ledger.KitState;

/** The states of the ledger as they are drawn. Each has its word and its pattern. */
public enum SetState {
    CLEAN_DRY(Mark.PLANNED),
    IN_USE(Mark.AWAITING),
    DIRTY(Mark.WARNING),
    TREATING(Mark.AWAITING),
    DRYING(Mark.AWAITING),
    RELEASED(Mark.PLANNED),
    OUT_OF_SERVICE(Mark.NOT_PLANNED);

    private final Mark mark;

    SetState(Mark mark) {
        this.mark = mark;
    }

    static SetState of(KitState state) {
        return valueOf(state.name());
    }

    public String words() {
        return Words.of("set." + name());
    }

    Mark mark() {
        return mark;
    }

    String style() {
        return "set-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
