package org.wadeplan.geo.access;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.geo.reach.Bank;

/** How a place on a stream is reached from the roads, or that it is not. */
public sealed interface Access {

    /** The walk, where there is one. */
    Optional<WalkIn> walkIn();

    /** For a page, without a full stop. */
    String words();

    /**
     * There is a road near enough.
     *
     * @param way the walk itself
     * @param roadKind the file's word for what the road is; blank where it does not say
     * @param crossings stream lines that the straight walk meets on its way, in walking order: each wants a bridge or wading
     * @param bank the side of the stream that the walk arrives on, looking downstream; empty where the road meets the stream
     */
    record OnFoot(WalkIn way, String roadKind, List<StreamCrossing> crossings, Optional<Bank> bank) implements Access {

        public OnFoot {
            crossings = List.copyOf(crossings);
        }

        @Override
        public Optional<WalkIn> walkIn() {
            return Optional.of(way);
        }

        /** {@code 180 m from Meadow track (track), 4 m up, to the true left bank; across L-7 without consent}. */
        @Override
        public String words() {
            StringBuilder words = new StringBuilder(String.format(Locale.ROOT, "%.0f m from ", way.lengthM()))
                    .append(way.road())
                    .append(roadKind.isBlank() || roadKind.equals(way.road()) ? "" : " (" + roadKind + ")");
            way.climbM()
                    .ifPresent(up ->
                            words.append(up < 0.5 ? ", no climb" : String.format(Locale.ROOT, ", %.0f m up", up)));
            bank.ifPresent(side -> words.append(", to the true ")
                    .append(side.name().toLowerCase(Locale.ROOT))
                    .append(" bank"));
            if (!way.acrossWithoutConsent().isEmpty()) {
                words.append("; across ")
                        .append(String.join(", ", way.acrossWithoutConsent()))
                        .append(" without consent");
            }
            if (!crossings.isEmpty()) {
                words.append("; meets ")
                        .append(crossings.stream()
                                .map(at -> String.format(Locale.ROOT, "%s after %.0f m", at.stream(), at.fromRoadM()))
                                .collect(Collectors.joining(", ")))
                        .append(": look for a bridge, or count it as wading");
            }
            return words.toString();
        }
    }

    /**
     * No road or track is near enough.
     *
     * @param withinM how far was looked, metres
     */
    record NoRoad(double withinM) implements Access {

        @Override
        public Optional<WalkIn> walkIn() {
            return Optional.empty();
        }

        @Override
        public String words() {
            return String.format(Locale.ROOT, "no road or track within %.0f m", withinM);
        }
    }
}
