package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where the length of the searched lines went. All lengths in metres.
 *
 * @param totalM length searched
 * @param usableM length in stretches that hold at least one reach
 * @param shares by group of reasons, in the order of {@link ReasonKind}, then by name. The firsts and the usable length
 *     add up to the total
 */
public record LengthTally(double totalM, double usableM, List<Share> shares) {

    /**
     * What one group of reasons rules out.
     *
     * @param firstM length for which this is the first reason
     * @param anyM length for which this is one of the reasons
     */
    public record Share(ReasonKind kind, String group, double firstM, double anyM) {}

    public LengthTally {
        shares = List.copyOf(shares);
    }

    /** {@code of 579.4 km: 212.0 km within 50 m of a confluence, 300.1 km usable}. */
    public String words() {
        StringBuilder words = new StringBuilder(String.format(Locale.ROOT, "of %.1f km: ", totalM / 1000));
        for (Share share : shares) {
            if (share.firstM() > 0) {
                words.append(String.format(Locale.ROOT, "%.1f km %s, ", share.firstM() / 1000, share.group()));
            }
        }
        return words.append(String.format(Locale.ROOT, "%.1f km where a reach fits", usableM / 1000))
                .toString();
    }

    /** Adds lengths up. */
    static final class Counter {

        private record Key(ReasonKind kind, String group) {}

        private static final Comparator<Key> ORDER =
                Comparator.comparing(Key::kind).thenComparing(Key::group);

        private final Map<Key, double[]> lengths = new TreeMap<>(ORDER);
        private double totalM;
        private double usableM;

        void usable(double lengthM) {
            totalM += lengthM;
            usableM += lengthM;
        }

        /** A stretch with its reasons, of which there is at least one. */
        void ruledOut(double lengthM, List<Hindrance> reasons) {
            totalM += lengthM;
            TreeMap<Key, Boolean> keys = new TreeMap<>(ORDER);
            reasons.forEach(reason -> keys.put(new Key(reason.kind(), reason.group()), true));
            keys.keySet().forEach(key -> lengths.computeIfAbsent(key, none -> new double[2])[1] += lengthM);
            lengths.computeIfAbsent(keys.firstKey(), none -> new double[2])[0] += lengthM;
        }

        void tooShort(double lengthM) {
            ruledOut(lengthM, List.of(TOO_SHORT));
        }

        private static final Hindrance TOO_SHORT =
                new Hindrance.Stated(ReasonKind.TOO_SHORT, "in what is left shorter than a reach", "", "");

        LengthTally tally() {
            List<Share> shares = new ArrayList<>();
            lengths.forEach((key, sums) -> shares.add(new Share(key.kind(), key.group(), sums[0], sums[1])));
            return new LengthTally(totalM, usableM, shares);
        }
    }
}
