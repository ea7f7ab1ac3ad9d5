package org.wadeplan.geo.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What became of the mapped length, in metres. The parts add up to the whole.
 *
 * @param mappedM all lines
 * @param eligibleM what may be drawn
 * @param filteredM left out by a choice of one's own
 * @param deniedM left out for refused consent
 * @param dryM left out as dry
 * @param nonTargetM left out as no stream of the kind that is sampled
 * @param leftOut by ground, in the order of its words
 */
public record FrameLengths(
        double mappedM,
        double eligibleM,
        double filteredM,
        double deniedM,
        double dryM,
        double nonTargetM,
        List<LeftOut> leftOut) {

    public FrameLengths {
        leftOut = List.copyOf(leftOut);
    }

    /** One ground for leaving stretches out, and their length in metres. */
    public record LeftOut(String reason, double lengthM) {}

    static FrameLengths of(Map<Standing, Long> mmByStanding, SortedMap<String, Long> mmByReason) {
        long all = mmByStanding.values().stream().mapToLong(Long::longValue).sum();
        List<LeftOut> leftOut = new ArrayList<>();
        mmByReason.forEach((reason, mm) -> leftOut.add(new LeftOut(reason, metres(mm))));
        return new FrameLengths(
                metres(all),
                metres(mmByStanding.getOrDefault(Standing.ELIGIBLE, 0L)),
                metres(mmByStanding.getOrDefault(Standing.FILTERED, 0L)),
                metres(mmByStanding.getOrDefault(Standing.DENIED, 0L)),
                metres(mmByStanding.getOrDefault(Standing.DRY, 0L)),
                metres(mmByStanding.getOrDefault(Standing.NON_TARGET, 0L)),
                leftOut);
    }

    /** The part of the mapped length in percent; 0 where nothing is mapped. */
    public double sharePct(double lengthM) {
        return mappedM == 0 ? 0 : 100 * lengthM / mappedM;
    }

    private static double metres(long mm) {
        return mm / 1000.0;
    }
}
