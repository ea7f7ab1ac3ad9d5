package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.hazards.assess.AssessedHazard;
import org.wadeplan.hazards.assess.SetAside;
import org.wadeplan.hazards.briefing.Briefing;
import org.wadeplan.hazards.briefing.ControlLine;
import org.wadeplan.hazards.briefing.EmergencyBlock;
import org.wadeplan.hazards.briefing.HazardBlock;
import org.wadeplan.hazards.briefing.StopLine;

/** The talk before going in, on one page, with its back for what is not read aloud. */
record BriefingPage(
        String title,
        String goBox,
        boolean reviewed,
        String length,
        List<String> newHere,
        List<Hazard> hazards,
        List<String> alsoCanKill,
        List<Stop> stops,
        List<String> questions,
        List<EmergencyBlock.Line> emergency,
        List<String> reminders,
        List<SignRow> signRows,
        List<String> cautions,
        String register,
        Back back) {

    private static final int LATE_JOINERS = 2;

    record Hazard(
            String rank,
            String title,
            boolean canKill,
            String sign,
            String rating,
            List<String> controls,
            List<String> why,
            String source) {}

    record Stop(String words, String detail, String source) {}

    /** Two people on one line. */
    record SignRow(String left, String right) {}

    /** What stands behind the sheet; empty lists where there is nothing. */
    record Back(List<Hazard> hazards, List<Stop> stops, List<String> lines) {
        boolean any() {
            return !hazards.isEmpty() || !stops.isEmpty() || !lines.isEmpty();
        }
    }

    boolean hasNew() {
        return !newHere.isEmpty();
    }

    boolean hasQuestions() {
        return !questions.isEmpty();
    }

    boolean hasAlso() {
        return !alsoCanKill.isEmpty();
    }

    static Section section(PlanSource source, SiteDay visit, Briefing briefing, Templates templates) {
        BriefingPage view = of(briefing, source.names(visit.day().people()));
        return new Section(
                "Briefing", visit.subject(source), visit.authorised(source), templates.fill("briefing-page", view));
    }

    /** The page that stands in for a briefing nobody has made: it says so, and that work waits for one. */
    static Section missing(PlanSource source, SiteDay visit, Templates templates) {
        return new Section(
                "Briefing",
                visit.subject(source),
                visit.authorised(source),
                templates.fill(
                        "briefing-missing",
                        new Fact(visit.site().id(), source.clock().day(visit.date()))));
    }

    static BriefingPage of(Briefing briefing, List<String> names) {
        return new BriefingPage(
                briefing.title(),
                briefing.goBox(),
                !briefing.goBox().contains("NOT REVIEWED"),
                briefing.wordCount() + " words, about " + briefing.readAloudMin() + " min aloud"
                        + (briefing.fitsOneTalk() ? "" : "; too long for one talk: split it"),
                briefing.newHere(),
                briefing.hazards().stream().map(BriefingPage::hazard).toList(),
                briefing.alsoCanKill(),
                briefing.stops().stream().map(BriefingPage::stop).toList(),
                briefing.questions(),
                briefing.emergency(),
                briefing.reminders(),
                signRows(names),
                briefing.cautions(),
                briefing.registerVersion(),
                back(briefing));
    }

    private static Hazard hazard(HazardBlock block) {
        return new Hazard(
                Integer.toString(block.rank()),
                block.hazard().title(),
                block.hazard().canKill(),
                block.hazard().sign().label(),
                rating(block),
                block.controls().stream().map(ControlLine::sentence).toList(),
                block.hazard().why(),
                block.hazard().source());
    }

    private static String rating(HazardBlock block) {
        AssessedHazard hazard = block.hazard();
        return "Risk " + hazard.inherent().band() + ", today "
                + hazard.residual().band() + ", with every control "
                + hazard.ifControlsDone().band()
                + (hazard.leansOnPeople() ? ". Leans on people and what they wear." : ".");
    }

    private static Stop stop(StopLine line) {
        boolean compared = line.limit().planned().isPresent();
        return new Stop(
                line.spoken(),
                compared ? line.detail().replace("not reached by the plan: ", "planned ") : "",
                line.limit().source());
    }

    private static List<SignRow> signRows(List<String> names) {
        List<String> all = new ArrayList<>(names);
        for (int i = 0; i < LATE_JOINERS; i++) {
            all.add("");
        }
        List<SignRow> rows = new ArrayList<>();
        for (int i = 0; i < all.size(); i += 2) {
            rows.add(new SignRow(all.get(i), i + 1 < all.size() ? all.get(i + 1) : ""));
        }
        return List.copyOf(rows);
    }

    private static Back back(Briefing briefing) {
        Briefing.Back back = briefing.back();
        List<String> lines = new ArrayList<>(back.lines());
        joined("Nobody has looked for: ", back.notLookedFor()).ifPresent(lines::add);
        joined("Roles that own a control and have no name: ", back.rolesWithoutName())
                .ifPresent(lines::add);
        joined("Left out: ", back.setAside().stream().map(SetAside::reason).toList())
                .ifPresent(lines::add);
        return new Back(
                back.hazards().stream().map(BriefingPage::hazard).toList(),
                back.stops().stream().map(BriefingPage::stop).toList(),
                List.copyOf(lines));
    }

    private static Optional<String> joined(String label, List<String> words) {
        return words.isEmpty() ? Optional.empty() : Optional.of(label + String.join("; ", words) + ".");
    }
}
