package org.wadeplan.geo.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.Junction;
import org.wadeplan.geo.network.LineMeasure;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Lays reaches along stream lines: from the start at the downstream end upstream, by length measured along the line.
 */
public final class ReachLayer {

    /** A start further off its line than this is doubtful, in metres: several times a handheld's error under trees. */
    public static final double DOUBTFUL_OFFSET_M = 20;

    /** A start further off its line than this belongs to another stream or is a slip, in metres. */
    public static final double FARTHEST_OFFSET_M = 100;

    /** Longest name that any handheld shows whole, in characters. */
    public static final int LONGEST_STAKE_NAME = 10;

    private final StreamNetwork network;
    private final CoordinateSystem system;
    private final ReachRule rule;
    private final List<Junction> junctions;

    /**
     * A layer for one round.
     *
     * @param network the round's stream lines
     * @param system the system that they are in
     * @param rule length and sub-reaches of every reach
     */
    public ReachLayer(StreamNetwork network, CoordinateSystem system, ReachRule rule) {
        this.network = network;
        this.system = system;
        this.rule = rule;
        this.junctions = network.junctions();
    }

    private ReachLayer(ReachLayer from, ReachRule rule) {
        this.network = from.network;
        this.system = from.system;
        this.rule = rule;
        this.junctions = from.junctions;
    }

    /** The same layer for reaches by another rule. */
    public ReachLayer withRule(ReachRule another) {
        return new ReachLayer(this, another);
    }

    /**
     * Lays one reach.
     *
     * @param site where it is to start
     * @param place the site's row, for problems
     * @return the reach with warnings; or why there can be none: no such line, start too far off it, too little line
     *     upstream of the start
     */
    public Checked<Reach> lay(SiteStart site, SourcePlace place) {
        List<Problem> problems = new ArrayList<>();
        stakeNamesFit(site, place).ifPresent(problems::add);
        if (network.line(site.stream()).isEmpty()) {
            problems.add(Problem.error(
                    "stream-unknown",
                    place,
                    "there is no stream line \"" + site.stream() + "\"",
                    "one of "
                            + network.lines().stream().map(line -> line.code()).toList(),
                    "correct the stream's code, or add its line to the map file"));
            return Checked.failed(problems);
        }
        LineMeasure measure = network.measure(site.stream());
        LineMeasure.Foot foot = measure.foot(site.start());
        offset(site, foot, place).ifPresent(problems::add);
        tooShort(site.stream(), measure, foot.chainageM(), place).ifPresent(problems::add);
        if (Checked.of(site, problems).hasErrors()) {
            return Checked.failed(problems);
        }
        confluence(site.stream(), foot.chainageM(), place).ifPresent(problems::add);
        return Checked.of(reach(site, measure, foot), problems);
    }

    private Reach reach(SiteStart site, LineMeasure measure, LineMeasure.Foot foot) {
        List<Stake> stakes = new ArrayList<>();
        for (int i = 0; i < rule.stakeCount(); i++) {
            double upstreamM = upstreamM(i);
            double chainageM = Math.max(0, foot.chainageM() - upstreamM);
            MetricPoint at = measure.at(chainageM);
            stakes.add(new Stake(
                    stakeName(site.shortCode(), upstreamM),
                    upstreamM,
                    chainageM,
                    measure.lengthM() - chainageM,
                    at,
                    system.toLonLat(at)));
        }
        double endM = stakes.get(stakes.size() - 1).chainageM();
        return new Reach(
                site.site(),
                site.stream(),
                rule,
                stakes,
                measure.between(foot.chainageM(), endM),
                foot.distanceM(),
                site.stakeBank());
    }

    /** Multiplied, not summed up, so that rounding does not add up along the reach. */
    private double upstreamM(int stake) {
        return rule.lengthM() * stake / rule.subReachCount();
    }

    private static String stakeName(String shortCode, double upstreamM) {
        return String.format(Locale.ROOT, "%s-%03d", shortCode, Math.round(upstreamM));
    }

    private Optional<Problem> stakeNamesFit(SiteStart site, SourcePlace place) {
        String longest = stakeName(site.shortCode(), rule.lengthM());
        boolean plain = site.shortCode().matches("[A-Za-z0-9]+");
        if (plain && longest.length() <= LONGEST_STAKE_NAME) {
            return Optional.empty();
        }
        return Optional.of(Problem.error(
                "stake-name-unfit",
                place,
                "the short code \"" + site.shortCode() + "\" gives stake names such as " + longest,
                "letters and digits only, and at most " + LONGEST_STAKE_NAME + " characters with the distance",
                "shorten the site's short code, such as BR01 for BRN-01"));
    }

    private Optional<Problem> offset(SiteStart site, LineMeasure.Foot foot, SourcePlace place) {
        if (foot.distanceM() <= DOUBTFUL_OFFSET_M) {
            return Optional.empty();
        }
        String found = String.format(
                Locale.ROOT,
                "the start lies %.0f m from the stream line %s%s",
                foot.distanceM(),
                site.stream(),
                nearerLine(site, foot));
        String expected = String.format(
                Locale.ROOT,
                "within %.0f m of its line; over %.0f m it is refused",
                DOUBTFUL_OFFSET_M,
                FARTHEST_OFFSET_M);
        return Optional.of(
                foot.distanceM() > FARTHEST_OFFSET_M
                        ? Problem.error(
                                "start-off-line", place, found, expected, "correct the start or the stream's code")
                        : Problem.warning(
                                "start-off-line",
                                place,
                                found + "; the nearest point of the line is used",
                                expected,
                                "check the start on the map, or take it again in the field"));
    }

    private String nearerLine(SiteStart site, LineMeasure.Foot foot) {
        return network.nearest(site.start())
                .filter(other -> other.foot().distanceM() < foot.distanceM())
                .map(other -> String.format(
                        Locale.ROOT,
                        " and %.0f m from %s",
                        other.foot().distanceM(),
                        other.stream().code()))
                .orElse("");
    }

    /** A start that is short of line by less than a millimetre is a matter of rounding. */
    private Optional<Problem> tooShort(String stream, LineMeasure measure, double startM, SourcePlace place) {
        double shortageM = rule.lengthM() - startM;
        if (shortageM <= 0.001) {
            return Optional.empty();
        }
        String whole = String.format(
                Locale.ROOT,
                "only %.0f m of the line %s lie between the start and the source, and a reach needs %.0f m",
                Math.floor(startM),
                stream,
                rule.lengthM());
        boolean canMove = measure.lengthM() >= rule.lengthM();
        return Optional.of(Problem.error(
                "reach-past-source",
                place,
                whole,
                String.format(Locale.ROOT, "a start at least %.0f m below the source", rule.lengthM()),
                canMove
                        ? String.format(Locale.ROOT, "move the start %.0f m downstream", Math.ceil(shortageM))
                        : String.format(
                                Locale.ROOT,
                                "choose another stream: this line is %.0f m long in all",
                                Math.floor(measure.lengthM()))));
    }

    private Optional<Problem> confluence(String stream, double startM, SourcePlace place) {
        for (Junction junction : junctions) {
            for (Junction.Arm arm : junction.arms()) {
                double upstreamM = startM - arm.chainageM();
                if (arm.code().equals(stream) && upstreamM > 0 && upstreamM < rule.lengthM()) {
                    return Optional.of(Problem.warning(
                            "reach-over-confluence",
                            place,
                            String.format(
                                    Locale.ROOT,
                                    "the reach runs over a confluence %.0f m above its start, with %s",
                                    upstreamM,
                                    others(junction, stream)),
                            "one stream from end to end: fish and flow differ above and below a confluence",
                            "move the start so that the reach lies wholly above or below it"));
                }
            }
        }
        return Optional.empty();
    }

    private static String others(Junction junction, String stream) {
        List<String> codes = junction.arms().stream()
                .map(Junction.Arm::code)
                .filter(code -> !code.equals(stream))
                .toList();
        return String.join(", ", codes);
    }
}
