package org.wadeplan.planner.files;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * One row of a table, read cell by cell.
 *
 * <p>Nothing here throws on what a person wrote. A broken cell is reported and gives a stand-in; where the cell was
 * required, {@link #whole} turns false and the row makes no record, so that no stand-in ever leaves this package. A
 * broken cell that may be blank counts as not known.
 */
final class Row {

    private static final int LONGEST_TEXT = 4000;

    private final SourcePlace place;
    private final Map<String, String> cells;
    private final List<Problem> problems;
    private boolean whole = true;

    Row(SourcePlace place, Map<String, String> cells, List<Problem> problems) {
        this.place = place;
        this.cells = cells;
        this.problems = problems;
    }

    /** File, line and the row's own name. */
    SourcePlace place() {
        return place;
    }

    /** False once a required cell was blank or broken. */
    boolean whole() {
        return whole;
    }

    /** The cell without spaces around it; empty where it is blank or the file has no such column. */
    String raw(String column) {
        return cells.getOrDefault(column, "");
    }

    void report(Problem problem) {
        problems.add(problem);
    }

    /** Reports a fault across cells that leaves no record to make. */
    void refuse(String column, Fault fault) {
        whole = false;
        report(column, fault);
    }

    private void report(String column, Fault fault) {
        problems.add(
                Problem.error(fault.code(), place.column(column), fault.found(), fault.expected(), fault.remedy()));
    }

    private <T> Optional<T> optional(String column, Function<String, Reading<T>> reader) {
        String text = raw(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Reading<T> reading = reader.apply(text);
        reading.fault().map(Fault::orBlank).ifPresent(fault -> report(column, fault));
        return reading.value();
    }

    private <T> T required(String column, Function<String, Reading<T>> reader, T standIn) {
        if (!cells.containsKey(column)) {
            // Reported once for the whole table, by its header.
            whole = false;
            return standIn;
        }
        if (raw(column).isEmpty()) {
            refuse(column, new Fault("blank", "the cell is blank", "a value: this column is required", "fill it in"));
            return standIn;
        }
        Reading<T> reading = reader.apply(raw(column));
        reading.fault().ifPresent(fault -> refuse(column, fault));
        return reading.value().orElse(standIn);
    }

    String text(String column) {
        return required(column, Row::plain, "");
    }

    Optional<String> optionalText(String column) {
        return optional(column, Row::plain);
    }

    /** The parts of a list between semicolons; none where the cell is blank. */
    List<String> optionalList(String column) {
        return optionalText(column).map(Row::parts).orElse(List.of());
    }

    List<String> list(String column) {
        return parts(text(column));
    }

    private static List<String> parts(String text) {
        return Arrays.stream(text.split(";", -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    <T> T word(String column, Words<T> words) {
        return required(column, words::read, words.any());
    }

    <T> Optional<T> optionalWord(String column, Words<T> words) {
        return optional(column, words::read);
    }

    double decimal(String column, Range range) {
        return required(column, text -> NumberCell.decimal(text, range), range.min());
    }

    OptionalDouble optionalDecimal(String column, Range range) {
        return optional(column, text -> NumberCell.decimal(text, range))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    int integer(String column, Range range) {
        return required(column, text -> NumberCell.integer(text, range), (int) range.min());
    }

    OptionalInt optionalInteger(String column, Range range) {
        return optional(column, text -> NumberCell.integer(text, range))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    boolean flag(String column) {
        return required(column, Words::flag, false);
    }

    Optional<Boolean> optionalFlag(String column) {
        return optional(column, Words::flag);
    }

    LocalDate date(String column) {
        return required(column, DateCell::date, LocalDate.EPOCH);
    }

    Optional<LocalDate> optionalDate(String column) {
        return optional(column, DateCell::date);
    }

    Optional<LocalTime> optionalTime(String column) {
        return optional(column, DateCell::time);
    }

    Instant instant(String column) {
        return required(column, DateCell::instant, Instant.EPOCH);
    }

    Optional<Instant> optionalInstant(String column) {
        return optional(column, DateCell::instant);
    }

    private static Reading<String> plain(String text) {
        if (text.length() > LONGEST_TEXT) {
            return Reading.fault(
                    "text-too-long",
                    "the cell holds " + text.length() + " characters",
                    "at most " + LONGEST_TEXT + " characters",
                    "shorten it; a quote that is not closed can swallow the rows after it");
        }
        boolean control =
                text.chars().anyMatch(letter -> Character.isISOControl(letter) && !Character.isWhitespace(letter));
        return control
                ? Reading.fault(
                        "control-character",
                        "the cell holds a control character that cannot be printed",
                        "text that can be printed",
                        "type the cell again")
                : Reading.of(text);
    }
}
