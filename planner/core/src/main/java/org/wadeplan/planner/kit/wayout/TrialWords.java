package org.wadeplan.planner.kit.wayout;

import java.time.Instant;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WindowFinder;

/** Puts a rule that a trial broke into one plain clause. */
final class TrialWords {

    private final Round round;
    private final WindowFinder windows;

    TrialWords(Round round) {
        this.round = round;
        this.windows = new WindowFinder(round);
    }

    String of(Problem problem, Trial trial) {
        if (problem.code().equals("week-light")) {
            Optional<String> sunset = afterSunset(problem.place().row().orElse(""), trial);
            if (sunset.isPresent()) {
                return sunset.get();
            }
        }
        String row = problem.place().row().map(name -> name + ": ").orElse("");
        return row + problem.found() + ", allowed is " + problem.expected();
    }

    private Optional<String> afterSunset(String visitName, Trial trial) {
        for (CrewDay day : trial.week().crewDays()) {
            for (Activity visit : day.visits()) {
                String name = visit.place() + " "
                        + visit.part().map(part -> part.word()).orElse("");
                Optional<Instant> sunset = round.site(visit.place())
                        .flatMap(site -> windows.sun(site, day.date()).sunset());
                if (name.equals(visitName)
                        && sunset.filter(visit.end()::isAfter).isPresent()) {
                    return Optional.of(visit.place() + " would last from " + clock(visit.start()) + " to "
                            + clock(visit.end()) + ", after sunset at " + clock(sunset.get()));
                }
            }
        }
        return Optional.empty();
    }

    private String clock(Instant time) {
        return KitWords.clock(time, round.header().zone());
    }
}
