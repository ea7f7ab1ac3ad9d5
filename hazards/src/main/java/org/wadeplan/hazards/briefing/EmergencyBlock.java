package org.wadeplan.hazards.briefing;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What people need when something has gone wrong. What is missing is printed as not known, never left out.
 *
 * @param positions where we are, in at least two forms that name their datum
 * @param access how help reaches us
 * @param nearestCare nearest place that treats emergencies, with its drive
 * @param coverage what can call for help here
 * @param emergencyNumber number to call
 * @param checkIn time of the check-in call
 * @param overdue time from which we are overdue
 * @param overdueAction what the contact does then
 */
public record EmergencyBlock(
        List<String> positions,
        Optional<String> access,
        Optional<String> nearestCare,
        Optional<String> coverage,
        Optional<String> emergencyNumber,
        Optional<LocalTime> checkIn,
        Optional<LocalTime> overdue,
        Optional<String> overdueAction) {

    /**
     * One line of the block.
     *
     * @param label what it is about
     * @param text what is known, or that it is not
     * @param known false where someone must still find out
     */
    public record Line(String label, String text, boolean known) {

        public String sentence() {
            return label + ": " + text + (text.endsWith(".") ? "" : ".");
        }
    }

    private static final String NOT_KNOWN = "NOT KNOWN. Find out before you leave.";
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final int POSITION_FORMS = 2;

    public EmergencyBlock {
        positions = List.copyOf(positions);
    }

    /** Nothing is known yet. */
    public static EmergencyBlock unknown() {
        return new EmergencyBlock(
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** In the order in which a caller is asked. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(line("Emergency number", emergencyNumber));
        lines.add(
                line("Position", positions.isEmpty() ? Optional.empty() : Optional.of(String.join(" = ", positions))));
        if (positions.size() == POSITION_FORMS - 1) {
            lines.add(new Line("Second form of the position", NOT_KNOWN, false));
        }
        lines.add(line("Access", access));
        lines.add(line("Nearest care", nearestCare));
        lines.add(line("Coverage", coverage));
        lines.add(line("Check in", checkIn.map(CLOCK::format)));
        lines.add(line("Overdue", overdue.map(CLOCK::format)));
        lines.add(line("When overdue", overdueAction));
        return List.copyOf(lines);
    }

    private static Line line(String label, Optional<String> text) {
        Optional<String> written = text.filter(words -> !words.isBlank());
        return new Line(label, written.orElse(NOT_KNOWN), written.isPresent());
    }
}
