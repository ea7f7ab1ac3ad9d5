package org.wadeplan.desktop.kit;

import java.time.LocalDate;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.week.CrewDay;

/** A crew-day that can be chosen; two are the same where date and crew are. */
public record CrewDayChoice(LocalDate date, String crew) {

    static CrewDayChoice of(CrewDay day) {
        return new CrewDayChoice(day.date(), day.crew());
    }

    /** {@code Mon 6 Sep, crew A} */
    @Override
    public String toString() {
        return Words.of("kit.crewDay", Times.day(date), crew);
    }
}
