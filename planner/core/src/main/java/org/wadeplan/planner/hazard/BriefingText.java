package org.wadeplan.planner.hazard;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.hazards.briefing.Briefing;

/** A briefing as lines to read aloud, with what is printed beside them. */
public final class BriefingText {

    private BriefingText() {}

    public static List<String> lines(VisitBriefing visit) {
        Briefing briefing = visit.briefing();
        List<String> lines = new ArrayList<>();
        lines.add("== " + visit.site() + " " + visit.part().word() + ", " + visit.date() + ", crew " + visit.crew()
                + " ==");
        lines.addAll(briefing.spoken());
        lines.add("-- " + briefing.wordCount() + " words, about " + briefing.readAloudMin() + " min aloud; register "
                + briefing.registerVersion());
        briefing.back().lines().forEach(line -> lines.add("   " + line));
        if (!briefing.back().rolesWithoutName().isEmpty()) {
            lines.add("   nobody is named as: "
                    + String.join(", ", briefing.back().rolesWithoutName()));
        }
        briefing.cautions().forEach(caution -> lines.add("   " + caution));
        return lines;
    }
}
