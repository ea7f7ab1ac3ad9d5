package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.hazards.briefing.Briefing;
import org.wadeplan.hazards.briefing.EmergencyBlock;
import org.wadeplan.hazards.briefing.HazardBlock;
import org.wadeplan.hazards.briefing.StopLine;
import org.wadeplan.hazards.limits.RiseWarning;

/**
 * The talk before going in, on one side.
 *
 * @param readFromBack titles of hazards whose details are read from the back
 * @param stopNow limits that the plan breaches, each on a line of its own
 * @param stops the others, two on a line
 * @param rise how soon the water could rise; blank where nobody wades
 * @param notKnown how many things nobody has looked for; blank where there are none
 * @param mostBehind how many hazards may be read from the back
 */
record BriefingPage(
        String title,
        String goBox,
        boolean reviewed,
        String length,
        List<String> newHere,
        List<Hazard> hazards,
        String leaning,
        List<String> readFromBack,
        List<String> alsoCanKill,
        List<Stop> stopNow,
        List<StopPair> stops,
        String rise,
        List<String> questions,
        String notKnown,
        List<EmergencyBlock.Line> emergency,
        List<String> reminders,
        List<SignRow> signRows,
        List<String> cautions,
        int mostBehind,
        BriefingBack back) {

    private static final int LATE_JOINERS = 2;

    /** @param lines what was seen here and what to do about it, as it is read */
    record Hazard(
            String rank,
            String title,
            boolean canKill,
            boolean unrated,
            String sign,
            List<String> lines,
            List<String> why,
            String rating,
            String source) {

        static Hazard of(HazardBlock block) {
            return new Hazard(
                    Integer.toString(block.rank()),
                    block.hazard().title(),
                    block.hazard().canKill(),
                    block.hazard().unrated(),
                    block.hazard().sign().label().replaceAll(" \\(ISO 7010 (\\w+).*\\)", " ($1)"),
                    block.spoken().stream().skip(1).map(Figures::printed).toList(),
                    block.hazard().why().stream().map(Figures::printed).toList(),
                    BriefingBack.letters(block),
                    block.hazard().source());
        }
    }

    record Stop(String words, String detail, String source) {

        static Stop of(StopLine line) {
            boolean compared =
                    line.limit().planned().isPresent() && !line.limit().breached();
            return new Stop(
                    Figures.printed(line.spoken()),
                    compared ? Figures.printed(line.detail().replace("not reached by the plan: ", "planned ")) : "",
                    line.limit().source());
        }
    }

    /** Two limits on one line; the right one is blank after an odd number. */
    record StopPair(Stop left, Stop right) {}

    /** Two people on one line. */
    record SignRow(String left, String right) {}

    boolean hasNew() {
        return !newHere.isEmpty();
    }

    boolean hasQuestions() {
        return !questions.isEmpty();
    }

    boolean hasAlso() {
        return !alsoCanKill.isEmpty();
    }

    boolean hasReadFromBack() {
        return !readFromBack.isEmpty();
    }

    boolean hasStops() {
        return !stopNow.isEmpty() || !stops.isEmpty();
    }

    /** @param behind how many of the lowest hazards that may move are read from the back */
    static BriefingPage of(BriefingSheet sheet, int behind) {
        Briefing briefing = sheet.group().briefing();
        PlanSource source = sheet.source();
        List<HazardBlock> movable = movable(briefing);
        List<HazardBlock> moved = movable.subList(Math.max(0, movable.size() - behind), movable.size());
        List<HazardBlock> front = briefing.hazards().stream()
                .filter(block -> !moved.contains(block))
                .toList();
        return new BriefingPage(
                briefing.site() + " " + sheet.group().parts() + ", "
                        + source.clock().day(briefing.date()) + ": before we go in",
                briefing.goBox(),
                !briefing.goBox().contains("NOT REVIEWED"),
                length(briefing),
                briefing.newHere(),
                front.stream().map(Hazard::of).toList(),
                leaning(front),
                moved.stream()
                        .map(block -> block.hazard().title() + (block.hazard().canKill() ? " – CAN KILL" : ""))
                        .toList(),
                briefing.alsoCanKill(),
                stops(briefing, true),
                pairs(stops(briefing, false)),
                briefing.rise().map(RiseWarning::sentence).orElse(""),
                briefing.questions(),
                notKnown(briefing),
                sheet.group().emergency(),
                briefing.reminders(),
                signRows(source.names(sheet.visit().day().people())),
                briefing.cautions(),
                movable.size(),
                BriefingBack.of(briefing, moved));
    }

    /** Neither what is new nor what the plan already breaches. */
    private static List<HazardBlock> movable(Briefing briefing) {
        return briefing.hazards().stream()
                .filter(block -> !block.hazard().newSinceLast())
                .filter(block -> briefing.stops().stream()
                        .noneMatch(stop -> stop.limit().breached()
                                && stop.limit().hazardId().equals(block.hazard().id())))
                .toList();
    }

    private static String length(Briefing briefing) {
        return briefing.wordCount() + " words, about " + briefing.readAloudMin() + " min aloud"
                + (briefing.fitsOneTalk() ? "" : "; too long for one talk: split it") + ". Register "
                + briefing.registerVersion() + ".";
    }

    private static String leaning(List<HazardBlock> front) {
        String ranks = front.stream()
                .filter(block -> block.leaning().isPresent())
                .map(block -> Integer.toString(block.rank()))
                .collect(Collectors.joining(", "));
        return ranks.isEmpty() ? "" : "Only rules and what we wear stand between us and " + ranks + ".";
    }

    private static String notKnown(Briefing briefing) {
        int count = briefing.back().notLookedFor().size();
        return count == 0 ? "" : count + " other things are not known; see back.";
    }

    private static List<Stop> stops(Briefing briefing, boolean breached) {
        return briefing.stops().stream()
                .filter(stop -> stop.limit().breached() == breached)
                .map(Stop::of)
                .toList();
    }

    private static List<StopPair> pairs(List<Stop> stops) {
        Stop none = new Stop("", "", "");
        int rows = (stops.size() + 1) / 2;
        List<StopPair> pairs = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            pairs.add(new StopPair(
                    stops.get(i),
                    Optional.of(i + rows)
                            .filter(at -> at < stops.size())
                            .map(stops::get)
                            .orElse(none)));
        }
        return List.copyOf(pairs);
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
}
