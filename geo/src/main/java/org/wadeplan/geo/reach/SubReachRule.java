package org.wadeplan.geo.reach;

/** Into how many sub-reaches a reach falls. */
public sealed interface SubReachRule {

    /** Most sub-reaches, because they are lettered from A. */
    int MOST = 26;

    /**
     * So many of equal length, whatever the reach's length.
     *
     * @param count 1 to 26
     */
    record Equal(int count) implements SubReachRule {

        public Equal {
            if (count < 1 || count > MOST) {
                throw new IllegalArgumentException("1 to 26 sub-reaches, not " + count);
            }
        }
    }

    /**
     * Of one length each, such as 15 m; a reach is then a whole number of them.
     *
     * @param lengthM above 0, metres
     */
    record OfLength(double lengthM) implements SubReachRule {

        public OfLength {
            if (!(lengthM > 0)) {
                throw new IllegalArgumentException("A sub-reach needs a length above 0 m, not " + lengthM);
            }
        }
    }
}
