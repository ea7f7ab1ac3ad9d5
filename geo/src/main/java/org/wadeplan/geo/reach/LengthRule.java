package org.wadeplan.geo.reach;

import java.util.Locale;
import java.util.Optional;

/** How long a reach is, by a protocol. */
public sealed interface LengthRule {

    /** Whether the length depends on the stream's width. */
    boolean needsWidth();

    /** {@code 150 m fixed}, {@code 40 x the mean wetted width, 150 to 4000 m}. */
    String words();

    /**
     * One length for every stream.
     *
     * @param lengthM metres along the line, above 0
     */
    record Fixed(double lengthM) implements LengthRule {

        public Fixed {
            if (!(lengthM > 0)) {
                throw new IllegalArgumentException("A reach needs a length above 0 m, not " + lengthM);
            }
        }

        @Override
        public boolean needsWidth() {
            return false;
        }

        @Override
        public String words() {
            return String.format(Locale.ROOT, "%.0f m fixed", lengthM);
        }
    }

    /**
     * A multiple of the mean wetted width, held between a floor and a cap.
     *
     * @param multiple how many widths
     * @param floorM never shorter, metres
     * @param capM never longer, metres
     * @param wide another cap for wide streams
     */
    record Widths(double multiple, double floorM, double capM, Optional<WideCap> wide) implements LengthRule {

        public Widths {
            boolean wideFits = wide.map(cap -> cap.capM() >= capM).orElse(true);
            if (!(multiple > 0) || !(floorM > 0) || !(capM >= floorM) || !wideFits) {
                throw new IllegalArgumentException("A multiple above 0 and 0 < floor <= cap <= wide cap, not "
                        + multiple + ", " + floorM + ", " + capM + ", " + wide);
            }
        }

        @Override
        public boolean needsWidth() {
            return true;
        }

        /** Metres for a stream of that mean wetted width, clamped. */
        public double lengthM(double widthM) {
            double topM = wide.filter(cap -> widthM > cap.aboveWidthM())
                    .map(WideCap::capM)
                    .orElse(capM);
            return Math.min(topM, Math.max(floorM, multiple * widthM));
        }

        @Override
        public String words() {
            String wideWords = wide.map(cap -> String.format(
                            Locale.ROOT, " (%.0f m where wider than %.0f m)", cap.capM(), cap.aboveWidthM()))
                    .orElse("");
            return String.format(
                    Locale.ROOT, "%.0f x the mean wetted width, %.0f to %.0f m%s", multiple, floorM, capM, wideWords);
        }
    }

    /**
     * The cap for streams above some width.
     *
     * @param aboveWidthM where the mean wetted width is more than this, metres
     * @param capM the cap there, metres
     */
    record WideCap(double aboveWidthM, double capM) {}
}
