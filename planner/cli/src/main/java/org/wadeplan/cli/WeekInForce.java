package org.wadeplan.cli;

import org.wadeplan.planner.round.Round;

/** Says which week an answer follows. */
final class WeekInForce {

    private WeekInForce() {}

    static String words(Round round) {
        int agreed = round.log().agreed().size();
        return agreed > 0
                ? "the week as agreed (agreed_week.csv, " + agreed + " lines)"
                : "a week planned now: this round has no agreed_week.csv";
    }
}
