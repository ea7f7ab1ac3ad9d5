package org.wadeplan.hazards.limits;

/** At what depth times speed a person of given size was seen to lose their footing. Failure estimates, not limits to work at. */
public final class PersonStability {

    public static final String ABT_SOURCE = "Abt, Wittler, Taylor and Love 1989 (from memory)";
    public static final String FINNISH_SOURCE = "Finnish rescue study 2001, RESCDAM (from memory)";

    /** Footing, light, clothing and debris, as the Finnish study grades them. */
    public enum Footing {
        GOOD(0.006, 0.3),
        NORMAL(0.004, 0.2),
        POOR(0.002, 0.1);

        private final double perMKg;
        private final double offsetM2S;

        Footing(double perMKg, double offsetM2S) {
            this.perMKg = perMKg;
            this.offsetM2S = offsetM2S;
        }
    }

    /** The tested people spanned about 62 to 173 m.kg; rounded outward, a local setting. */
    private static final double SMALLEST_M_KG = 60;

    private static final double LARGEST_M_KG = 180;

    private static final double KG_PER_LB = 0.453_592_37;
    private static final double M_PER_IN = 0.0254;

    private PersonStability() {}

    /** Abt and others 1989, m2/s: 0.0929 exp(0.001906 H M + 1.09)^2, for height times mass of 60 to 180 m.kg. */
    public static Estimate abtM2S(Wader wader) {
        return inStudies(wader).then(() -> 0.0929 * Math.pow(Math.exp(0.001906 * wader.heightMassMKg() + 1.09), 2));
    }

    /** The same in US units, ft2/s: exp(0.022 W H / 1000 + 1.09)^2 with pounds and inches. */
    public static Estimate abtFt2S(double massLb, double heightIn) {
        return inStudies(new Wader(heightIn * M_PER_IN, massLb * KG_PER_LB))
                .then(() -> Math.pow(Math.exp(0.022 * massLb * heightIn / 1000 + 1.09), 2));
    }

    /** Finnish rescuers 2001, m2/s: a H M + b by footing, for height times mass of 60 to 180 m.kg. */
    public static Estimate finnishM2S(Wader wader, Footing footing) {
        return inStudies(wader).then(() -> footing.perMKg * wader.heightMassMKg() + footing.offsetM2S);
    }

    private static Span inStudies(Wader wader) {
        return Span.of("the tests with people")
                .within("Height in m", wader.heightM(), 1.2, 2.3)
                .within("Height times mass in m.kg", wader.heightMassMKg(), SMALLEST_M_KG, LARGEST_M_KG);
    }
}
