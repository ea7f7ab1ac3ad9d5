package org.wadeplan.hazards.briefing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.hazards.assess.SetAside;
import org.wadeplan.hazards.limits.RiseWarning;

/**
 * A briefing: the part that is read aloud, in order, and what goes to the back of the sheet.
 *
 * @param site site code
 * @param date day of the visit
 * @param title first line
 * @param goBox what stands in the go box: STOP, NOT REVIEWED, or who reviewed it
 * @param newHere what is new since the last visit; said first
 * @param hazards first to say first; more than seven only where more are new or breached
 * @param alsoCanKill titles of deadly hazards whose details are at the back
 * @param stops breached ones first
 * @param rise how soon the water could rise, a warning; empty where nobody wades
 * @param emergency lines of the emergency block
 * @param reminders spoken cautions
 * @param cautions printed cautions
 * @param back what did not fit or is not read aloud
 * @param registerVersion version of the register
 */
public record Briefing(
        String site,
        LocalDate date,
        String title,
        String goBox,
        List<String> newHere,
        List<HazardBlock> hazards,
        List<String> alsoCanKill,
        List<StopLine> stops,
        Optional<RiseWarning> rise,
        List<EmergencyBlock.Line> emergency,
        List<String> reminders,
        List<String> cautions,
        Back back,
        String registerVersion) {

    /**
     * The back of the sheet.
     *
     * @param hazards in rank order, whole
     * @param stops of those hazards
     * @param lines controls and questions that were too many to read aloud
     * @param notLookedFor things at the site that nobody has reported present or absent
     * @param setAside hazards left out, with the reason
     * @param rolesWithoutName roles that own a control and have nobody
     */
    public record Back(
            List<HazardBlock> hazards,
            List<StopLine> stops,
            List<String> lines,
            List<String> notLookedFor,
            List<SetAside> setAside,
            List<String> rolesWithoutName) {}

    /** Questions to ask on site, in rank order. */
    public List<String> questions() {
        return hazards.stream().flatMap(block -> block.question().stream()).toList();
    }

    /** Everything that is read aloud, line by line. */
    public List<String> spoken() {
        List<String> lines = new ArrayList<>();
        lines.add(title + ".");
        lines.add(goBox + ".");
        newHere.forEach(line -> lines.add("New: " + HazardBlock.ended(line)));
        stops.stream().filter(stop -> stop.limit().breached()).forEach(stop -> lines.add(stop.spoken()));
        hazards.forEach(block -> lines.addAll(block.spoken()));
        if (!alsoCanKill.isEmpty()) {
            lines.add("These can kill here too, see the back: " + String.join(", ", alsoCanKill) + ".");
        }
        stops.stream().filter(stop -> !stop.limit().breached()).forEach(stop -> lines.add(stop.spoken()));
        rise.ifPresent(warning -> lines.add(warning.sentence()));
        lines.addAll(questions());
        emergency.forEach(line -> lines.add(line.sentence()));
        if (!back.notLookedFor().isEmpty()) {
            lines.add(back.notLookedFor().size() + " other things are not known; see back.");
        }
        lines.addAll(reminders);
        return lines;
    }

    public int wordCount() {
        return SpokenLength.words(spoken());
    }

    /** Whole minutes, rounded up. */
    public int readAloudMin() {
        return SpokenLength.aloudMin(wordCount());
    }

    /** False where even the shortest honest sheet is too long to read in one go: split the talk. */
    public boolean fitsOneTalk() {
        return wordCount() <= SpokenLength.MOST_WORDS;
    }
}
