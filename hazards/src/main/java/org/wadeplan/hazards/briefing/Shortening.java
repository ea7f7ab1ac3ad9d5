package org.wadeplan.hazards.briefing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.wadeplan.hazards.assess.StopLimit;
import org.wadeplan.hazards.briefing.Briefing.Back;
import org.wadeplan.hazards.register.ControlLevel;

/**
 * Makes a briefing short enough to read aloud by moving the least pressing parts to the back, one at a time: questions of
 * the lower hazards, other ways of working (chosen before the day, not at the water), then whole hazards from the last. A
 * breached stop limit never moves; what is new never moves; a deadly hazard may lose its details but its name stays in front.
 */
final class Shortening {

    private static final int QUESTIONS_KEPT = 3;
    private static final int DEADLY_KEPT_WHOLE = 3;

    private Shortening() {}

    static Briefing shortened(Briefing whole) {
        Briefing briefing = whole;
        while (!briefing.fitsOneTalk()) {
            Optional<Briefing> shorter = oneStep(briefing);
            if (shorter.isEmpty()) {
                return briefing;
            }
            briefing = shorter.get();
        }
        return briefing;
    }

    private static Optional<Briefing> oneStep(Briefing briefing) {
        return Stream.<Function<Briefing, Optional<Briefing>>>of(
                        Shortening::lastQuestionBack,
                        Shortening::lastSubstituteBack,
                        Shortening::lastHarmlessHazardBack,
                        Shortening::lastDeadlyDetailsBack)
                .flatMap(step -> step.apply(briefing).stream())
                .findFirst();
    }

    private static Optional<Briefing> lastHarmlessHazardBack(Briefing briefing) {
        return last(briefing.hazards().stream().filter(block -> !block.hazard().canKill() && movable(block, briefing)))
                .map(block -> moved(briefing, block, false));
    }

    private static Optional<Briefing> lastDeadlyDetailsBack(Briefing briefing) {
        return last(briefing.hazards().stream().skip(DEADLY_KEPT_WHOLE).filter(block -> movable(block, briefing)))
                .map(block -> moved(briefing, block, true));
    }

    private static Optional<Briefing> lastQuestionBack(Briefing briefing) {
        return last(briefing.hazards().stream()
                        .filter(block -> block.question().isPresent())
                        .skip(QUESTIONS_KEPT))
                .map(block -> withBlock(
                        briefing,
                        block,
                        HazardBlock::withoutQuestion,
                        "Ask: " + block.question().orElse("")));
    }

    private static Optional<Briefing> lastSubstituteBack(Briefing briefing) {
        return last(briefing.hazards().stream()
                        .filter(block -> substitute(block).isPresent()))
                .map(block -> {
                    ControlLine line = substitute(block).orElseThrow();
                    return withBlock(
                            briefing,
                            block,
                            kept -> kept.without(line),
                            block.hazard().title() + ". " + line.sentence());
                });
    }

    private static Optional<ControlLine> substitute(HazardBlock block) {
        return block.controls().stream()
                .filter(line -> line.level() == ControlLevel.SUBSTITUTE)
                .findFirst();
    }

    /** False for what is new and for what the plan already breaches. */
    static boolean movable(HazardBlock block, Briefing briefing) {
        boolean breached = briefing.stops().stream()
                .map(StopLine::limit)
                .anyMatch(limit -> limit.breached()
                        && limit.hazardId().equals(block.hazard().id()));
        return !breached && !block.hazard().newSinceLast();
    }

    private static Optional<HazardBlock> last(Stream<HazardBlock> blocks) {
        return blocks.max(Comparator.comparingInt(HazardBlock::rank));
    }

    /** The block and its stops go to the back; the name of a deadly one stays in front. */
    static Briefing moved(Briefing from, HazardBlock block, boolean keepName) {
        List<String> deadly = new ArrayList<>(from.alsoCanKill());
        if (keepName) {
            deadly.add(0, block.hazard().title().toLowerCase(Locale.ROOT));
        }
        Back back = from.back();
        List<HazardBlock> behind = Stream.concat(Stream.of(block), back.hazards().stream())
                .sorted(Comparator.comparingInt(HazardBlock::rank))
                .toList();
        List<StopLine> stopsBehind = Stream.concat(
                        from.stops().stream().filter(stop -> belongs(stop.limit(), block)), back.stops().stream())
                .toList();
        return with(
                from,
                from.hazards().stream().filter(kept -> !kept.equals(block)).toList(),
                deadly,
                from.stops().stream()
                        .filter(stop -> !belongs(stop.limit(), block))
                        .toList(),
                new Back(
                        behind,
                        stopsBehind,
                        back.lines(),
                        back.notLookedFor(),
                        back.setAside(),
                        back.rolesWithoutName()));
    }

    private static boolean belongs(StopLimit limit, HazardBlock block) {
        return !limit.breached() && limit.hazardId().equals(block.hazard().id());
    }

    private static Briefing withBlock(
            Briefing from, HazardBlock block, UnaryOperator<HazardBlock> change, String lineForTheBack) {
        Back back = from.back();
        List<String> lines = new ArrayList<>(List.of(lineForTheBack));
        lines.addAll(back.lines());
        return with(
                from,
                from.hazards().stream()
                        .map(kept -> kept.equals(block) ? change.apply(kept) : kept)
                        .toList(),
                from.alsoCanKill(),
                from.stops(),
                new Back(
                        back.hazards(),
                        back.stops(),
                        lines,
                        back.notLookedFor(),
                        back.setAside(),
                        back.rolesWithoutName()));
    }

    private static Briefing with(
            Briefing from, List<HazardBlock> hazards, List<String> alsoCanKill, List<StopLine> stops, Back back) {
        return new Briefing(
                from.site(),
                from.date(),
                from.title(),
                from.goBox(),
                from.newHere(),
                hazards,
                alsoCanKill,
                stops,
                from.rise(),
                from.emergency(),
                from.reminders(),
                from.cautions(),
                back,
                from.registerVersion());
    }
}
