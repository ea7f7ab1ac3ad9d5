package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.network.LinePlace;

/**
 * What is in the way of a reach, and how far its start must move to clear it.
 *
 * @param start the start as it is
 * @param lengthM length of the reach, metres; infinite where none can be sized
 * @param inTheWay every reason met between the start and the reach's upper end; empty where the reach is clear
 * @param upstream the nearest clear start upstream
 * @param downstream the nearest clear start downstream
 * @param upstreamBlocked what rules out the stretches passed on the way up
 * @param downstreamBlocked what rules out the stretches passed on the way down
 * @param room what the stream between confluences has to offer: {@code 118 m from the confluence of BRN, TRB …}
 */
public record StartMove(
        LinePlace start,
        double lengthM,
        List<Reason> inTheWay,
        Optional<Shift> upstream,
        Optional<Shift> downstream,
        List<RejectedStretch> upstreamBlocked,
        List<RejectedStretch> downstreamBlocked,
        String room) {

    public StartMove {
        inTheWay = List.copyOf(inTheWay);
        upstreamBlocked = List.copyOf(upstreamBlocked);
        downstreamBlocked = List.copyOf(downstreamBlocked);
    }

    /**
     * A move along the stream.
     *
     * @param moveM how far, metres, above 0
     * @param to the new start
     * @param clears what was in the way, with the distance then: {@code clears the bridge X by 50 m}
     */
    public record Shift(double moveM, LinePlace to, List<String> clears) {

        public Shift {
            clears = List.copyOf(clears);
        }
    }

    public boolean isClear() {
        return inTheWay.isEmpty();
    }

    /** One sentence for each way out, nearest first; one that says that there is none. */
    public List<String> advice() {
        List<String> words = new ArrayList<>();
        if (isClear()) {
            words.add("nothing in the way was found");
            return words;
        }
        upstream.ifPresent(shift -> words.add(sentence(shift, "upstream")));
        downstream.ifPresent(shift -> words.add(sentence(shift, "downstream")));
        if (words.size() == 2 && downstream.get().moveM() < upstream.get().moveM()) {
            words.add(0, words.remove(1));
        }
        if (words.isEmpty()) {
            words.add(String.format(Locale.ROOT, "no reach of %s m fits here: %s", Bounds.number(lengthM), room));
        }
        return words;
    }

    private static String sentence(Shift shift, String way) {
        String clears = shift.clears().isEmpty() ? "" : ": " + String.join(", ", shift.clears());
        return String.format(Locale.ROOT, "move the start %.0f m %s%s", shift.moveM(), way, clears);
    }
}
