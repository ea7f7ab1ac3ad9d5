package org.wadeplan.planner.pack;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.pack.page.PackClock;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;

/** {@code contents.txt}: every file, what it is, and what was kept out. */
final class ContentsList {

    static final String NAME = "contents.txt";

    private static final String WITHHELD = """

            Kept out of all of it
              Names, phones and notes of landholders; phones, homes and notes of people; medical facts; gate codes.
              They stay in the round folder's files whose names end in _private. Write the numbers you need by hand.
              The calendar has no coordinates and no site codes, and is marked confidential.

            What this is
              A plan and papers to help people decide. It is not permission to enter the water and calls no site safe.
              If a sheet and the river disagree, believe the river. The stricter rule wins.
            """;

    private ContentsList() {}

    static String of(Round round, RoundPlan plan, List<PackFile> files, List<Problem> problems, Instant madeAt) {
        PackClock clock = new PackClock(round.header().zone());
        String lines = files.stream()
                .map(file -> "  " + file.name() + "  " + file.what()
                        + (file.pages().isPresent() ? ", " + file.pages().getAsInt() + " pages" : ""))
                .collect(Collectors.joining("\n"));
        String missing = problems.isEmpty()
                ? ""
                : problems.stream()
                        .map(problem -> "  " + problem.sentence())
                        .collect(Collectors.joining("\n", "\n\nNot written, and why\n", ""));
        return round.header().title() + "\nPlan " + plan.version().label() + ", made " + clock.moment(madeAt)
                + "\n\nFiles\n" + lines + missing + "\n" + WITHHELD;
    }
}
