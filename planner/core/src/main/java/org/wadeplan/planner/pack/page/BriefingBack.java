package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.hazards.assess.Band;
import org.wadeplan.hazards.assess.SetAside;
import org.wadeplan.hazards.briefing.Briefing;
import org.wadeplan.hazards.briefing.HazardBlock;

/**
 * What stands behind a briefing; empty lists where there is nothing.
 *
 * @param readToo hazards that did not fit in front: read aloud with the others
 * @param hazards not read aloud
 * @param ratings of the hazards in front, with the key to the letters
 */
record BriefingBack(
        List<BriefingPage.Hazard> readToo,
        List<BriefingPage.Hazard> hazards,
        List<BriefingPage.Stop> stops,
        List<String> lines,
        String ratings) {

    boolean hasReadToo() {
        return !readToo.isEmpty();
    }

    boolean hasHazards() {
        return !hazards.isEmpty();
    }

    boolean hasStops() {
        return !stops.isEmpty();
    }

    static BriefingBack of(Briefing briefing, List<HazardBlock> readToo) {
        Briefing.Back back = briefing.back();
        return new BriefingBack(
                readToo.stream().map(BriefingPage.Hazard::of).toList(),
                back.hazards().stream().map(BriefingPage.Hazard::of).toList(),
                back.stops().stream().map(BriefingPage.Stop::of).toList(),
                lines(briefing),
                ratings(briefing));
    }

    private static List<String> lines(Briefing briefing) {
        Briefing.Back back = briefing.back();
        List<String> lines = new ArrayList<>();
        joined("Also: ", back.lines(), " · ").ifPresent(lines::add);
        joined("Nobody has looked for: ", back.notLookedFor(), "; ").ifPresent(lines::add);
        joined("No name for: ", back.rolesWithoutName(), "; ").ifPresent(lines::add);
        joined("Left out: ", back.setAside().stream().map(SetAside::reason).toList(), "; ")
                .ifPresent(lines::add);
        return List.copyOf(lines);
    }

    private static Optional<String> joined(String label, List<String> words, String between) {
        return words.isEmpty() ? Optional.empty() : Optional.of(label + Figures.ended(String.join(between, words)));
    }

    private static String ratings(Briefing briefing) {
        String key = Arrays.stream(Band.values())
                .map(band -> band + " " + band.words())
                .collect(Collectors.joining(", "));
        String front = briefing.hazards().stream()
                .map(block -> block.rank() + " " + letters(block))
                .collect(Collectors.joining("; "));
        return "Risk before controls, with what is in place today, with every control done. In front: " + front
                + ". Key: " + key + ".";
    }

    static String letters(HazardBlock block) {
        return Stream.of(
                        block.hazard().inherent(),
                        block.hazard().residual(),
                        block.hazard().ifControlsDone())
                .map(score -> score.band().name())
                .collect(Collectors.joining(", "));
    }
}
