package org.wadeplan.hazards.briefing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wadeplan.hazards.assess.AssessedHazard;
import org.wadeplan.hazards.assess.Assessment;
import org.wadeplan.hazards.briefing.Briefing.Back;
import org.wadeplan.hazards.register.Control;

/** Turns an assessment into what a leader reads to a crew before going in. */
public final class BriefingWriter {

    private static final int MOST_HAZARDS = 7;

    private static final List<String> REMINDERS = List.of(
            "Anyone may stop the work. No reason needed.", "If this sheet and the river disagree, believe the river.");

    private static final List<String> CAUTIONS = List.of(
            "This sheet helps people talk about risk. It is not permission to enter the water.",
            "Numbers come from published studies and from local settings. They do not know today's river.",
            "Check your agency's own code. The stricter rule wins.",
            "Not legal or medical advice. A competent person reviews this sheet before it is used.");

    private BriefingWriter() {}

    /**
     * The briefing, at most 450 spoken words where that can be done without hiding a stop, a new hazard or the name of a
     * deadly one; {@link Briefing#fitsOneTalk} says whether it could.
     *
     * @param review empty where no competent person has read the assessment yet; the sheet then says so
     */
    public static Briefing write(
            Assessment assessment, EmergencyBlock emergency, CrewRoles crew, Optional<Review> review) {
        List<HazardBlock> blocks = blocks(assessment.hazards(), crew);
        List<StopLine> stops =
                assessment.stopLimits().stream().map(StopLine::new).toList();
        Briefing whole = new Briefing(
                assessment.site(),
                assessment.date(),
                assessment.site() + ", " + assessment.date() + ": before we go in",
                goBox(assessment, review),
                newHere(assessment.hazards()),
                blocks,
                List.of(),
                stops,
                assessment.rise(),
                emergency.lines(),
                REMINDERS,
                CAUTIONS,
                new Back(
                        List.of(),
                        List.of(),
                        List.of(),
                        assessment.notLookedFor(),
                        assessment.setAside(),
                        rolesWithoutName(assessment.hazards(), crew)),
                assessment.registerVersion());
        return Shortening.shortened(topOnly(whole));
    }

    /** The last hazards go to the back until seven are left; a breached or new one stays, even as the eighth. */
    private static Briefing topOnly(Briefing whole) {
        Briefing briefing = whole;
        for (int i = whole.hazards().size() - 1; i >= 0 && briefing.hazards().size() > MOST_HAZARDS; i--) {
            HazardBlock block = whole.hazards().get(i);
            if (Shortening.movable(block, briefing)) {
                briefing = Shortening.moved(briefing, block, block.hazard().canKill());
            }
        }
        return briefing;
    }

    private static List<HazardBlock> blocks(List<AssessedHazard> hazards, CrewRoles crew) {
        return IntStream.range(0, hazards.size())
                .mapToObj(i -> HazardBlock.of(i + 1, hazards.get(i), crew))
                .toList();
    }

    private static String goBox(Assessment assessment, Optional<Review> review) {
        String reviewed = review.map(read -> "Reviewed by " + read.reviewer() + " on " + read.day())
                .orElse("NOT REVIEWED");
        return assessment.stop() ? "STOP. The plan breaches a limit. " + reviewed : reviewed;
    }

    private static List<String> newHere(List<AssessedHazard> hazards) {
        return hazards.stream()
                .flatMap(hazard -> hazard.seen().stream())
                .filter(seen -> seen.newSinceLast())
                .map(seen -> seen.sentence())
                .toList();
    }

    private static List<String> rolesWithoutName(List<AssessedHazard> hazards, CrewRoles crew) {
        return hazards.stream()
                .flatMap(hazard -> hazard.controls().stream())
                .map(Control::owner)
                .filter(crew::missing)
                .distinct()
                .sorted()
                .toList();
    }
}
