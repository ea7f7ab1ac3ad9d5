package org.wadeplan.geo.terrain;

import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.lines.LineSet;

/**
 * The slope along stream lines, from heights of the ground, over a stated window.
 *
 * <p>Around the stretch that is asked for, a window is laid along the same line, over the nodes on it. A falling course is
 * fitted to the heights at its stations, and a straight line to that course: its slope is the answer. Heights that are off by
 * half a vertical step, or by as much as they stray from the falling course, could make a slope out of nothing; that slope is
 * the least that the grid can tell. A lesser one is not given: the window is lengthened, and at last the answer is that the
 * grid cannot tell. Windows of 500 to 1,000 m or of one contour are common practice: with heights rounded to 1 m, a reach of
 * 150 m alone could not tell 0.67 % from nothing.
 *
 * <p>The same question gives the same answer, whatever was asked before. Safe to share between threads; quickest when all
 * stretches of a line are asked one after the other.
 */
public final class SlopeFit {

    /** The window that is tried first, metres along the line. */
    public static final double WINDOW_M = 500;

    /** The longest window, metres along the line. */
    public static final double LONGEST_WINDOW_M = 1000;

    private static final double[] WINDOW_SHARES = {0, 0.5, 1};

    /** A window of fewer cells holds no course, only two heights. */
    private static final double LEAST_CELLS = 3;

    private static final double MOST_UNKNOWN = 0.2;

    private final LineSet lines;
    private final Ground ground;
    private final double windowM;
    private final double longestM;
    private volatile Optional<LineProfile> lastProfile = Optional.empty();

    /** With the usual windows. */
    public SlopeFit(LineSet lines, Ground ground) {
        this(lines, ground, WINDOW_M, LONGEST_WINDOW_M);
    }

    /**
     * @param lines all running downstream
     * @param windowM tried first, metres, above 0
     * @param longestM tried last, metres, at least {@code windowM}
     */
    public SlopeFit(LineSet lines, Ground ground, double windowM, double longestM) {
        if (!(windowM > 0) || !(longestM >= windowM)) {
            throw new IllegalArgumentException("Not a pair of windows: " + windowM + " m and " + longestM + " m");
        }
        this.lines = lines;
        this.ground = ground;
        this.windowM = windowM;
        this.longestM = longestM;
    }

    /** The slope alone, for whoever needs no more: see {@link #along}. */
    public Slope slope(int line, double fromM, double toM) {
        return along(line, fromM, toM).slope();
    }

    /**
     * The slope around a stretch of a line.
     *
     * @param line the line's number
     * @param fromM chainage of one end of the stretch, metres
     * @param toM chainage of the other end, on either side
     */
    public FittedSlope along(int line, double fromM, double toM) {
        if (!ground.isKnown()) {
            return FittedSlope.unresolved("the round has no grid of elevations");
        }
        LineProfile profile = profile(line);
        double reachM = Math.abs(toM - fromM);
        double middleM = (fromM + toM) / 2;
        FittedSlope answer = FittedSlope.unresolved("");
        for (double share : WINDOW_SHARES) {
            double wantedM = Math.max(windowM + share * (longestM - windowM), reachM);
            answer = over(profile, middleM, wantedM, reachM);
            if (answer.slope() instanceof Slope.Fitted || wantedM >= profile.lengthM()) {
                return answer;
            }
        }
        return answer;
    }

    private LineProfile profile(int line) {
        Optional<LineProfile> last = lastProfile;
        if (last.isPresent() && last.get().line() == line) {
            return last.get();
        }
        LineProfile made = LineProfile.of(lines, line, ground);
        lastProfile = Optional.of(made);
        return made;
    }

    /** The window is moved, not cut, where one end of the line is near; it is cut where the line is shorter. */
    private FittedSlope over(LineProfile profile, double middleM, double wantedM, double reachM) {
        double lengthM = profile.lengthM();
        double startM = Math.min(Math.max(0, middleM - wantedM / 2), Math.max(0, lengthM - wantedM));
        FallLine fall = FallLine.over(profile, startM, Math.min(lengthM, startM + wantedM), ground.verticalStepM());
        boolean shortened = wantedM > lengthM;
        Optional<String> reason = whyNot(fall, shortened, reachM);
        return reason.isPresent()
                ? new FittedSlope(new Slope.Unresolved(reason.get()), fall.fromM(), fall.toM(), 0, shortened)
                : new FittedSlope(
                        new Slope.Fitted(fall.percent(), fall.lengthM()),
                        fall.fromM(),
                        fall.toM(),
                        fall.leastPercent(),
                        shortened);
    }

    private Optional<String> whyNot(FallLine fall, boolean shortened, double reachM) {
        String window = words("%.0f m", fall.lengthM()) + (shortened ? ", all that the line has," : "");
        if (fall.unknownShare() > MOST_UNKNOWN) {
            return Optional.of(words("the grid has no height for %.0f %% of ", 100 * fall.unknownShare()) + window);
        }
        if (fall.lengthM() < LEAST_CELLS * ground.cellM()) {
            return Optional.of("cells of " + Metres.words(ground.cellM()) + " m are too coarse for " + window
                    + words(" which must span at least %.0f cells", LEAST_CELLS));
        }
        if (fall.tells()) {
            return Optional.empty();
        }
        boolean rises = fall.riseM() > fall.strayM() * 3;
        String why = rises
                ? words("heights rise downstream by %.1f m over ", fall.riseM()) + window
                        + " so either the line runs upstream there or the grid misses the valley"
                : told(fall) + " over " + window + words(" tell no less than %.2f %%", fall.leastPercent());
        return Optional.of(
                why + " (cells of " + Metres.words(ground.cellM()) + words(" m, stretch of %.0f m)", reachM));
    }

    private String told(FallLine fall) {
        return fall.strayM() > ground.verticalStepM() / 2
                ? words("heights that stray %.1f m from a falling course", fall.strayM())
                : "heights in steps of " + Metres.words(ground.verticalStepM()) + " m";
    }

    private static String words(String form, double number) {
        return String.format(Locale.ROOT, form, number);
    }
}
