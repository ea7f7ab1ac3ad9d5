package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
 * @param columns the others
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
        List<StopColumn> columns,
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
    private static final int SIGN_COLUMNS = 3;

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
                    lines(block),
                    block.hazard().why().stream().map(Figures::printed).toList(),
                    BriefingBack.letters(block),
                    block.hazard().source());
        }

        /** What is read after the title; lines of one person that follow each other stand behind their name once. */
        private static List<String> lines(HazardBlock block) {
            List<String> lines = new ArrayList<>();
            String owner = "";
            for (String spoken : block.spoken().subList(1, block.spoken().size())) {
                String line = Figures.capital(Figures.printed(spoken));
                if (!owner.isEmpty() && line.startsWith(owner)) {
                    lines.set(lines.size() - 1, lines.get(lines.size() - 1) + line.substring(owner.length() - 1));
                } else {
                    owner = line.contains(": ") ? line.substring(0, line.indexOf(": ") + 2) : "";
                    lines.add(line);
                }
            }
            return List.copyOf(lines);
        }
    }

    record Stop(String words, String detail, String source) {

        static Stop of(StopLine line) {
            boolean compared =
                    line.limit().planned().isPresent() && !line.limit().breached();
            String measure = line.limit().measure().map(words -> words + " ").orElse("");
            String planned = line.detail().replace("not reached by the plan: " + measure, "planned ");
            return new Stop(
                    Figures.printed(line.spoken()),
                    compared ? Figures.printed(planned) : "",
                    line.limit().source());
        }

        /** A line of bullet and space counts too. */
        int length() {
            return words.length() + detail.length() + 12;
        }
    }

    record StopColumn(List<Stop> stops) {}

    /** People on one line; blank for those who join later. */
    record SignRow(List<String> names) {}

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
        return !stopNow.isEmpty()
                || columns.stream().anyMatch(column -> !column.stops().isEmpty());
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
                        + source.clock().shortDay(briefing.date()) + ": before we go in",
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
                columns(stops(briefing, false)),
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

    /**
     * Neither what is new nor what the plan already breaches; deadly ones come first, and so move last.
     */
    private static List<HazardBlock> movable(Briefing briefing) {
        return briefing.hazards().stream()
                .filter(block -> !block.hazard().newSinceLast())
                .filter(block -> briefing.stops().stream()
                        .noneMatch(stop -> stop.limit().breached()
                                && stop.limit().hazardId().equals(block.hazard().id())))
                .sorted(Comparator.comparing(block -> !deadly(block)))
                .toList();
    }

    private static boolean deadly(HazardBlock block) {
        return block.hazard().canKill() || block.hazard().unrated();
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

    /** Two columns of about the same height, read down the left one first. */
    private static List<StopColumn> columns(List<Stop> stops) {
        int half = stops.stream().mapToInt(Stop::length).sum() / 2;
        int left = 0;
        for (int length = 0; left < stops.size() && length < half; left++) {
            length += stops.get(left).length();
        }
        return List.of(new StopColumn(stops.subList(0, left)), new StopColumn(stops.subList(left, stops.size())));
    }

    private static List<SignRow> signRows(List<String> names) {
        List<String> all = new ArrayList<>(names);
        for (int blank = 0; blank < LATE_JOINERS || all.size() % SIGN_COLUMNS != 0; blank++) {
            all.add("");
        }
        List<SignRow> rows = new ArrayList<>();
        for (int i = 0; i < all.size(); i += SIGN_COLUMNS) {
            rows.add(new SignRow(List.copyOf(all.subList(i, i + SIGN_COLUMNS))));
        }
        return List.copyOf(rows);
    }
}
