package org.wadeplan.planner.effort;

/**
 * Resistance of electrodes and the field around them, in deep water: near a bed or a surface the resistance is up to about
 * twice as high. Lengths in metres, conductivity ambient in uS/cm, resistance in ohm. Formulas: Novotny and Priegel 1974
 * and textbook physics, from memory.
 */
public final class Electrodes {

    private static final double S_M_PER_US_CM = 1e-4;

    private Electrodes() {}

    /** A sphere well below the surface: 1/(2 pi s d). */
    public static double sphereOhm(double diameterM, double ambientUsCm) {
        return 1 / (2 * Math.PI * siemens(ambientUsCm) * diameterM);
    }

    /** A sphere half out of the water: 1/(pi s d). */
    public static double halfSphereOhm(double diameterM, double ambientUsCm) {
        return 1 / (Math.PI * siemens(ambientUsCm) * diameterM);
    }

    /** A ring of wire: ln(8 b/a)/(4 pi^2 s b), with b the ring's radius and a the wire's. */
    public static double ringOhm(double ringDiameterM, double wireDiameterM, double ambientUsCm) {
        double ringRadiusM = ringDiameterM / 2;
        return Math.log(8 * ringDiameterM / wireDiameterM)
                / (4 * Math.PI * Math.PI * siemens(ambientUsCm) * ringRadiusM);
    }

    /** A rod or cable: (ln(4 L/d) - 1)/(2 pi s L). */
    public static double rodOhm(double lengthM, double diameterM, double ambientUsCm) {
        return (Math.log(4 * lengthM / diameterM) - 1) / (2 * Math.PI * siemens(ambientUsCm) * lengthM);
    }

    /** Equal anodes side by side, one after the other with the cathode: Ra/n + Rc. */
    public static double systemOhm(double anodeOhm, int anodes, double cathodeOhm) {
        return anodeOhm / anodes + cathodeOhm;
    }

    /** Field around a sphere, V/cm: I 10^6/(4 pi r^2 Cw), with the current in A and the distance in cm. */
    public static double fieldVCm(double currentA, double distanceCm, double ambientUsCm) {
        return currentA * 1e6 / (4 * Math.PI * distanceCm * distanceCm * ambientUsCm);
    }

    private static double siemens(double ambientUsCm) {
        if (!(ambientUsCm > 0) || Double.isInfinite(ambientUsCm)) {
            throw new IllegalArgumentException("The conductivity must be above 0 uS/cm, not " + ambientUsCm);
        }
        return ambientUsCm * S_M_PER_US_CM;
    }
}
