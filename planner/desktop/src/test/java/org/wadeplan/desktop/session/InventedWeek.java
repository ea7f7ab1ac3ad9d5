package org.wadeplan.desktop.session;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround.Cover;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.files.RoundReader;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.plan.PlanVersion;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Placement;
import org.wadeplan.planner.week.Unplaced;
import org.wadeplan.planner.week.WeekPlan;

/** The demo round with a plan made by hand, so that every figure on the screen is known: two days, two crews. */
public final class InventedWeek {

    /** The round as it lies in the project. */
    public static final Path FOLDER =
            Path.of("../../demo-sites/ilvermoor").toAbsolutePath().normalize();

    public static final ZoneId ZONE = ZoneId.of("Atlantic/Azores");
    public static final LocalDate MONDAY = LocalDate.of(2027, 9, 6);

    /** Bars of the crews: nine of crew A, six of crew B past midnight, five of crew A on Tuesday. */
    public static final int CREW_BARS = 20;

    private static Optional<Round> read = Optional.empty();

    private InventedWeek() {}

    public static synchronized Round round() {
        Round round =
                read.orElseGet(() -> RoundReader.read(FOLDER, Set.of()).value().orElseThrow());
        read = Optional.of(round);
        return round;
    }

    public static Instant at(int day, String time) {
        return MONDAY.plusDays(day).atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
    }

    public static RoundPlan plan() {
        return plan(60);
    }

    /** With the cleanings a quarter of an hour longer, as after a find. */
    public static RoundPlan planWithLongerClean() {
        return plan(75);
    }

    private static RoundPlan plan(int cleanMin) {
        Round round = round();
        return new RoundPlan(
                round.header().id(),
                new PlanVersion("7f3a9c21e0", round.hash().whole(), 20270906, 2000, "0.1.0"),
                round.sites().stream().map(site -> reach(round, site)).toList(),
                decisions(round),
                List.of(),
                permissions(),
                new TurnaroundTable(List.of()),
                week(cleanMin),
                kit(),
                List.of(),
                true,
                problems());
    }

    public static List<Problem> problems() {
        return List.of(
                Problem.error(
                        "flow-against-line",
                        SourcePlace.part("streams.gpkg", "OUN"),
                        "the line runs from mouth to source",
                        "source to mouth",
                        "look at it on the map; accept the repair with --accept reverse:OUN or turn it round"),
                Problem.warning(
                        "margin-small",
                        SourcePlace.line("sites.csv", 3).row("BRN-02").column("max_depth_m"),
                        "a depth 0.06 m greater would change the method",
                        "",
                        "measure it first"),
                Problem.warning(
                        "rest-short",
                        SourcePlace.part("plan.json", "PEL-01 lift"),
                        "crew A has 10 h 45 min of rest",
                        "11 h",
                        "start later"),
                Problem.note("travel-estimated", SourcePlace.file("travel.csv"), "one drive was estimated", "", ""));
    }

    private static Reach reach(Round round, Site site) {
        StreamNetwork network = round.terrain().network();
        double startM = network.chainageM(site.stream(), site.start());
        double streamM = network.line(site.stream()).orElseThrow().lengthM();
        List<Stake> stakes = new ArrayList<>();
        for (int i = 0; i <= 10; i++) {
            double chainageM = startM - 15 * i;
            MetricPoint place = network.at(site.stream(), chainageM);
            stakes.add(new Stake(
                    String.format(Locale.ROOT, "%s-%03d", site.shortCode(), 15 * i),
                    15 * i,
                    chainageM,
                    streamM - chainageM,
                    place,
                    round.terrain().crs().toLonLat(place)));
        }
        return new Reach(
                site.id(),
                site.stream(),
                round.header().reach().protocol().fixedRule().orElseThrow(),
                stakes,
                network.between(site.stream(), startM, startM - 150),
                0,
                site.stakeBank().orElse(Bank.LEFT));
    }

    private static List<MethodDecision> decisions(Round round) {
        return round.sites().stream()
                .map(site -> new MethodDecision(
                        site.id(),
                        site.id().equals("HSK-02")
                                ? new MethodOutcome.Undecided(
                                        List.of("clarity"), List.of(9, 11), List.of("SPOT", "TRAP"), List.of())
                                : chosen(site.id()),
                        "survey-method",
                        "0123456789abcdef".repeat(4)))
                .toList();
    }

    private static MethodOutcome chosen(String site) {
        boolean nets = site.startsWith("PEL");
        return new MethodOutcome.Chosen(
                nets ? 15 : 5,
                nets ? "r15" : "r5",
                nets ? "TRAP" : "EFISH",
                OptionalInt.of(3),
                List.of(new MethodOutcome.Reading("max depth", "0.48", "<=0.8")));
    }

    private static List<Permission> permissions() {
        return List.of(
                permission("BRN-01", "EFISH", 0, List.of()),
                permission("PEL-01", "TRAP", 0, List.of("permit P-PEL is pending")),
                permission("PEL-01", "TRAP", 1, List.of("permit P-PEL is pending")));
    }

    private static Permission permission(String site, String method, int day, List<String> awaiting) {
        return new Permission(
                site,
                method,
                MONDAY.plusDays(day),
                List.of(),
                awaiting,
                List.of("Key 4."),
                Optional.of(LocalTime.of(7, 15)),
                Optional.empty());
    }

    /** Crew A loads on Monday what stands in the demo's store; a meter is short. */
    private static KitPlan kit() {
        return new KitPlan(
                List.of(new CrewDayLoad(
                        "A",
                        MONDAY,
                        List.of(
                                load("electrical case", "backpack-unit", "backpack unit", 1, "each", List.of("E2")),
                                load(
                                        "electrical case",
                                        "battery-pack",
                                        "battery packs",
                                        2,
                                        "each",
                                        List.of("P1", "P2")),
                                load("instrument case", "conductivity-meter", "meter, 1 missing", 0, "each", List.of()),
                                load("kit set", "kit-set", "kit set K1, wading", 1, "set", List.of("K1")),
                                load("paper case", "record-sheet", "record sheet", 11, "sheet", List.of())))),
                List.of(new Shortage(
                        MONDAY,
                        List.of("A", "B"),
                        "conductivity-meter",
                        2,
                        1,
                        "M2: calibration was last valid on 2027-09-05",
                        "have M2 calibrated before Monday")));
    }

    private static LoadLine load(
            String container, String kind, String label, double quantity, String unit, List<String> items) {
        return new LoadLine(container, kind, label, quantity, unit, items, Optional.empty(), List.of("BRN-01"));
    }

    private static WeekPlan week(int cleanMin) {
        return new WeekPlan(
                List.of(mondayA(), mondayB(), tuesdayA()),
                List.of(decon("K1", 0, "17:15", cleanMin), decon("T2", 1, "10:00", cleanMin)),
                List.of(new Placement(
                        "PEL-01",
                        VisitPart.SET,
                        Optional.of(at(0, "14:20")),
                        Optional.of(at(0, "18:20")),
                        "low water at Pell mouth 16:20, two hours either side",
                        40)),
                List.of(new Unplaced("OUN-02", "EFISH", List.of("consent was refused"))),
                List.of(),
                List.of());
    }

    private static CrewDay mondayA() {
        return new CrewDay(
                "A",
                MONDAY,
                List.of("imre", "yusra", "oskar"),
                "V1",
                List.of(
                        plain(ActivityKind.LOAD, at(0, "07:30"), at(0, "08:00"), "DEPOT"),
                        plain(ActivityKind.TRAVEL, at(0, "08:00"), at(0, "08:30"), "BRN-01"),
                        visit("BRN-01", "EFISH", VisitPart.SURVEY, 0, "08:30", "13:30", "K1"),
                        plain(ActivityKind.RINSE, at(0, "13:30"), at(0, "13:45"), "BRN-01"),
                        plain(ActivityKind.TRAVEL, at(0, "13:45"), at(0, "15:25"), "PEL-01"),
                        visit("PEL-01", "TRAP", VisitPart.SET, 0, "15:25", "16:30", "T2"),
                        plain(ActivityKind.TRAVEL, at(0, "16:30"), at(0, "17:00"), "DEPOT"),
                        plain(ActivityKind.UNLOAD, at(0, "17:00"), at(0, "17:15"), "DEPOT"),
                        plain(ActivityKind.DECON, at(0, "17:15"), at(0, "18:15"), "DEPOT")));
    }

    private static CrewDay mondayB() {
        return new CrewDay(
                "B",
                MONDAY,
                List.of("thandiwe", "dagny"),
                "V2",
                List.of(
                        plain(ActivityKind.LOAD, at(0, "16:00"), at(0, "16:30"), "DEPOT"),
                        plain(ActivityKind.TRAVEL, at(0, "16:30"), at(0, "17:30"), "PEL-02"),
                        visit("PEL-02", "SPOT", VisitPart.MARK, 0, "17:30", "18:00", "K4"),
                        plain(ActivityKind.WAIT, at(0, "18:00"), at(0, "22:30"), "PEL-02"),
                        visit("PEL-02", "SPOT", VisitPart.NIGHT, 0, "22:30", "23:30", "K4"),
                        plain(ActivityKind.TRAVEL, at(0, "23:30"), at(1, "00:20"), "DEPOT")));
    }

    private static CrewDay tuesdayA() {
        return new CrewDay(
                "A",
                MONDAY.plusDays(1),
                List.of("imre", "yusra", "oskar"),
                "V1",
                List.of(
                        plain(ActivityKind.LOAD, at(1, "06:30"), at(1, "07:00"), "DEPOT"),
                        plain(ActivityKind.TRAVEL, at(1, "07:00"), at(1, "07:30"), "PEL-01"),
                        visit("PEL-01", "TRAP", VisitPart.LIFT, 1, "07:30", "09:30", "T2"),
                        plain(ActivityKind.TRAVEL, at(1, "09:30"), at(1, "10:00"), "DEPOT"),
                        plain(ActivityKind.DECON, at(1, "10:00"), at(1, "11:15"), "DEPOT")));
    }

    private static Activity plain(ActivityKind kind, Instant start, Instant end, String place) {
        return new Activity(
                kind,
                start,
                end,
                place,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                "travel table");
    }

    private static Activity visit(
            String site, String method, VisitPart part, int day, String from, String to, String kitSet) {
        return new Activity(
                ActivityKind.VISIT,
                at(day, from),
                at(day, to),
                site,
                Optional.of(site),
                Optional.of(part),
                Optional.of(method),
                List.of(kitSet),
                Optional.of(at(day, to).minusSeconds(900)),
                "from four earlier visits");
    }

    private static DeconTask decon(String kitSet, int day, String from, int cleanMin) {
        return new DeconTask(
                kitSet,
                "A",
                List.of("PEL"),
                at(day, from),
                at(day, from).plusSeconds(60L * cleanMin),
                at(day, from).plusSeconds(60L * cleanMin + 12 * 3600),
                List.of(
                        new DeconStep("brush", "brush all mud off", 20, true, Optional.empty(), Optional.empty()),
                        new DeconStep("soak", "hot dip", 15, true, Optional.of("hot-bay"), Optional.of("50 °C")),
                        new DeconStep("dry", "hang to dry", 720, false, Optional.of("drying room"), Optional.empty())),
                List.of(new Cover("LTW", Material.HARD, "hot-dip-50", EvidenceGrade.B, "invented for this test")),
                "Lattice weed is known in the Pell.");
    }

    /** Read and planned, with its four problems. */
    public static OpenedRound opened() {
        return new OpenedRound(
                Optional.of(round()),
                Optional.of(plan()),
                problems(),
                round().header().allDays().stream().map(InventedWeek::sky).toList(),
                Optional.of(new WeekInForce(plan(), false)));
    }

    private static DaySky sky(LocalDate day) {
        int of = (int) MONDAY.until(day, java.time.temporal.ChronoUnit.DAYS);
        return new DaySky(
                day,
                Optional.of(at(of, "06:25")),
                Optional.of(at(of, "19:48")),
                Optional.of(at(of, "20:33")),
                List.of(new DaySky.LowWaterWindow("Pell mouth", at(of, "14:20"), at(of, "16:20"), at(of, "18:20"))));
    }
}
