package org.wadeplan.hazards.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.hazards.assess.AssessedHazard;
import org.wadeplan.hazards.assess.SiteHazard;

/**
 * One hazard on the sheet.
 *
 * @param rank 1 for the first to say
 * @param hazard scores, reasons, sign and source, printed beside what is read
 * @param controls those read with it, best level first
 * @param question asked on site; empty where it has been moved to the back
 */
public record HazardBlock(int rank, AssessedHazard hazard, List<ControlLine> controls, Optional<String> question) {

    public HazardBlock {
        controls = List.copyOf(controls);
    }

    static HazardBlock of(int rank, AssessedHazard hazard, CrewRoles crew) {
        List<ControlLine> controls = hazard.controls().stream()
                .map(control -> ControlLine.of(control, crew))
                .toList();
        return new HazardBlock(rank, hazard, controls, hazard.askOnSite());
    }

    HazardBlock without(ControlLine control) {
        return new HazardBlock(
                rank,
                hazard,
                controls.stream().filter(line -> !line.equals(control)).toList(),
                question);
    }

    HazardBlock withoutQuestion() {
        return new HazardBlock(rank, hazard, controls, Optional.empty());
    }

    /** What is read aloud, in order. */
    public List<String> spoken() {
        List<String> lines = new ArrayList<>();
        lines.add(rank + ". " + ended(hazard.title()) + severity());
        // what is new has been said at the top of the sheet
        hazard.seen().stream()
                .filter(seen -> !seen.newSinceLast())
                .map(SiteHazard::sentence)
                .filter(seen -> !seen.equals(hazard.title()))
                .forEach(seen -> lines.add(ended(seen)));
        controls.forEach(control -> lines.add(control.sentence()));
        if (hazard.controls().isEmpty()) {
            lines.add("No control is written for this. Agree on one before anyone goes in.");
        }
        return lines;
    }

    private String severity() {
        if (hazard.unrated()) {
            return " Nobody has rated this: take it as deadly.";
        }
        return hazard.canKill() ? " This can kill." : "";
    }

    static String ended(String sentence) {
        return sentence.matches(".*[.!?]") ? sentence : sentence + ".";
    }

    /** Printed under the controls where nothing better than rules and worn gear is in place. */
    public Optional<String> leaning() {
        return hazard.leansOnPeople()
                ? Optional.of("Rests on people and what they wear: nothing better is in place.")
                : Optional.empty();
    }

    /** {@code B (act) -> C (keep in mind) if all controls are done} */
    public String rating() {
        return "before controls " + hazard.inherent().band() + ", in place today "
                + hazard.residual().band() + ", with every control done "
                + hazard.ifControlsDone().band();
    }
}
