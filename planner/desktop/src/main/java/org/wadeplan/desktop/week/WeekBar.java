package org.wadeplan.desktop.week;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A bar in a lane. Minutes count from the local midnight that begins the lane's date, by the clock on the wall.
 *
 * @param id its own; names the thing that it stands for, and after an @ which stretch of it
 * @param medianMin where half of all visits are done; the rest of the bar is the reserve for the slower ones
 * @param slackMin how much later a visit could start
 * @param label what is written in it
 * @param spoken the whole of it in a sentence
 * @param site the site it belongs to
 */
public record WeekBar(
        String id,
        BarKind kind,
        int fromMin,
        int toMin,
        OptionalInt medianMin,
        OptionalInt slackMin,
        String label,
        String spoken,
        Optional<String> site) {

    /** Whether both stand for one thing: the treatment and the drying of one cleaning, on two days even. */
    boolean sameThing(String otherId) {
        return BarId.thing(id).equals(BarId.thing(otherId));
    }
}
