package org.wadeplan.planner.decon.trace;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;

/** Checks a find against the round: every fault at once. */
public final class FindReader {

    private final Round round;
    private final String source;
    private final List<Problem> problems = new ArrayList<>();

    private FindReader(Round round, String source) {
        this.round = round;
        this.source = source;
    }

    /**
     * The find, or every fault in it.
     *
     * @param source where the words are from, for problems: {@code find}, or the name of an event file
     */
    public static Checked<Find> read(Round round, FindWords words, String source) {
        return new FindReader(round, source).read(words);
    }

    private Checked<Find> read(FindWords words) {
        List<String> waters = round.waters().stream().map(Water::id).toList();
        List<String> pests = round.biosecurity().pests().stream().map(Pest::id).toList();
        Optional<String> water = known("water", words.water(), waters);
        Optional<String> pest = known("pest", words.pest(), pests);
        Optional<String> site = words.site()
                .flatMap(id -> known(
                        "site",
                        Optional.of(id),
                        round.sites().stream().map(Site::id).toList()));
        site.flatMap(round::site).ifPresent(found -> checkInWater(found, water));
        Optional<Instant> seen = required("seen", words.seen()).flatMap(this::time);
        if (!problems.isEmpty()) {
            return Checked.failed(problems);
        }
        return Checked.of(new Find(water.orElseThrow(), pest.orElseThrow(), seen.orElseThrow(), site, words.note()));
    }

    private Optional<String> known(String column, Optional<String> word, List<String> known) {
        Optional<String> given = required(column, word);
        if (given.isPresent() && !known.contains(given.get())) {
            problems.add(Problem.error(
                    "find-unknown-" + column,
                    place(column),
                    "this round has no " + column + " \"" + given.get() + "\"",
                    String.join(", ", known),
                    "give one of these"));
            return Optional.empty();
        }
        return given;
    }

    private Optional<String> required(String column, Optional<String> word) {
        Optional<String> given = word.map(String::strip).filter(text -> !text.isEmpty());
        if (given.isEmpty()) {
            problems.add(Problem.error(
                    "find-incomplete", place(column), "not given", "a find says where, what and when", "add it"));
        }
        return given;
    }

    private void checkInWater(Site site, Optional<String> water) {
        Optional<String> lies = round.waterOf(site).map(Water::id);
        if (water.isPresent() && !lies.equals(water)) {
            problems.add(Problem.error(
                    "find-site-elsewhere",
                    place("site"),
                    site.id() + " lies in " + lies.orElse("no water of the round") + ", not in " + water.get(),
                    "a site of " + water.get(),
                    "correct the site or the water"));
        }
    }

    private Optional<Instant> time(String text) {
        Optional<Instant> read = parsed(text);
        if (read.isEmpty()) {
            problems.add(Problem.error(
                    "find-time-unreadable",
                    place("seen"),
                    "\"" + text + "\" is no time",
                    "a local time such as 2027-09-07T17:20 (in " + zone() + "), or an instant such as"
                            + " 2027-09-07T17:20:00Z",
                    "write the year first, then T, then hours and minutes"));
            return Optional.empty();
        }
        LocalDate last = round.header().allDays().stream()
                .max(LocalDate::compareTo)
                .orElse(round.header().lastDay());
        Instant from = round.header().firstDay().atStartOfDay(zone()).toInstant();
        Instant until = last.plusDays(1).atStartOfDay(zone()).toInstant();
        if (read.get().isBefore(from) || !read.get().isBefore(until)) {
            problems.add(Problem.error(
                    "find-outside-the-week",
                    place("seen"),
                    text + " is not in the round's days",
                    round.header().firstDay() + " to " + last + ", reserve days too",
                    "correct the time, or enter an older find in water_pests.csv"));
            return Optional.empty();
        }
        return read;
    }

    /** An instant, a time with an offset, or a local time of the round. Where the clocks go back, the earlier of the two. */
    private Optional<Instant> parsed(String text) {
        try {
            return Optional.of(OffsetDateTime.parse(text).toInstant());
        } catch (DateTimeException notWithOffset) {
            return local(text);
        }
    }

    private Optional<Instant> local(String text) {
        try {
            LocalDateTime local = LocalDateTime.parse(text.replace(' ', 'T'));
            boolean skipped = zone().getRules().getValidOffsets(local).isEmpty();
            return skipped ? Optional.empty() : Optional.of(local.atZone(zone()).toInstant());
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }

    private ZoneId zone() {
        return round.header().zone();
    }

    private SourcePlace place(String column) {
        return SourcePlace.file(source).column(column);
    }
}
