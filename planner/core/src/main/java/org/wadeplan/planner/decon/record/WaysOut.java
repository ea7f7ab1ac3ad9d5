package org.wadeplan.planner.decon.record;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;

/** Finds what would help a set that is held: each way is worked out, none is only hoped for. */
final class WaysOut {

    private final Round round;
    private final TransferRules rules;
    private final Question question;
    private final ClockWords clock;

    /** The same question for another set or another moment. */
    interface Question {
        ReleaseAnswer ask(String kitSet, String toWater, Instant at);
    }

    WaysOut(Round round, TransferRules rules, Question question) {
        this.round = round;
        this.rules = rules;
        this.question = question;
        this.clock = new ClockWords(round.header().zone());
    }

    ReleaseAnswer added(ReleaseAnswer held, List<String> openWaters) {
        List<String> ways = new ArrayList<>();
        Optional<Instant> earliest = held.earliest();
        earliest.ifPresent(at -> ways.add("wait until " + clock.at(at)));
        Optional<KitSet> set = round.store().kitSet(held.kitSet());
        if (earliest.isEmpty() && set.isPresent() && !openWaters.isEmpty()) {
            Turnaround clean = rules.needed(set.get(), openWaters, held.toWater());
            if (clean.possible()) {
                Instant released = held.at().plus(Duration.ofMinutes(clean.totalMin()));
                ways.add("clean it now: " + steps(clean) + "; people free at "
                        + clock.at(held.at().plus(Duration.ofMinutes(clean.crewMin()))) + ", released at "
                        + clock.at(released) + " if it is recorded, dry to the touch and checked");
                earliest = Optional.of(released);
            }
        }
        otherSets(held, set, openWaters, ways);
        backThere(held, ways);
        return new ReleaseAnswer(
                held.kitSet(),
                held.toWater(),
                held.at(),
                held.verdict(),
                held.held(),
                held.cleared(),
                held.missing(),
                held.refused(),
                held.letGo(),
                earliest,
                List.copyOf(ways));
    }

    private static String steps(Turnaround clean) {
        List<String> words = new ArrayList<>();
        for (DeconStep step : clean.steps()) {
            words.add(step.step() + " " + step.minutes() + " min"
                    + step.target().map(target -> " (" + target + ")").orElse(""));
        }
        return String.join(", ", words);
    }

    /** Sets for the same work: those that may leave now, and where no row covers this one, those that rows do cover. */
    private void otherSets(ReleaseAnswer held, Optional<KitSet> set, List<String> openWaters, List<String> ways) {
        List<String> free = new ArrayList<>();
        List<String> coverable = new ArrayList<>();
        for (KitSet other : round.store().kitSets()) {
            boolean swap = set.isPresent()
                    && other.purpose() == set.get().purpose()
                    && !other.id().equals(held.kitSet());
            if (swap && question.ask(other.id(), held.toWater(), held.at()).mayLeave()) {
                free.add(other.id());
            }
            if (swap && uncovered(set.get(), openWaters, held) && !uncovered(other, openWaters, held)) {
                coverable.add(other.id());
            }
        }
        if (!free.isEmpty()) {
            ways.add("take " + String.join(" or ", free) + " instead: by the records nothing stands against it at "
                    + clock.at(held.at()));
        }
        if (!coverable.isEmpty()) {
            ways.add("next time use " + String.join(" or ", coverable) + " in " + String.join(", ", openWaters)
                    + ": the table has a row for every pest on every material of it");
        }
    }

    private boolean uncovered(KitSet set, List<String> openWaters, ReleaseAnswer held) {
        return !openWaters.isEmpty()
                && !rules.needed(set, openWaters, held.toWater()).possible();
    }

    private static void backThere(ReleaseAnswer held, List<String> ways) {
        List<String> open = held.held().stream()
                .filter(one -> !one.open().isEmpty())
                .map(ReleaseAnswer.Held::water)
                .distinct()
                .toList();
        if (open.size() == 1 && !open.get(0).equals(held.toWater())) {
            ways.add("use it only in " + open.get(0) + " until it is clean");
        }
    }
}
