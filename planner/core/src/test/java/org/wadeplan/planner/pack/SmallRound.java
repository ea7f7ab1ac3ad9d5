package org.wadeplan.planner.pack;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.ReachRule;
import org.wadeplan.hazards.limits.WadingProfile;
import org.wadeplan.hazards.register.HazardRegister;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.round.Barrier;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.CarePlace;
import org.wadeplan.planner.round.CheckInRules;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.round.ElectricRules;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.InputHash;
import org.wadeplan.planner.round.LightRules;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Place;
import org.wadeplan.planner.round.Priority;
import org.wadeplan.planner.round.ReachSettings;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.SearchSettings;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.Terrain;
import org.wadeplan.planner.round.TideRules;
import org.wadeplan.planner.round.TravelFallback;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.round.Water;

/** Two invented streams and four sites, one for each kind of method. One letter in a name has a macron on purpose. */
public final class SmallRound {

    static final String SOURCE = "invented for this test";
    static final LocalDate MONDAY = LocalDate.of(2027, 9, 6);
    static final ZoneId ZONE = ZoneId.of("Atlantic/Azores");
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private SmallRound() {}

    static Instant at(int day, String time) {
        return MONDAY.plusDays(day).atTime(LocalTime.parse(time)).atZone(ZONE).toInstant();
    }

    public static Round round(Path folder) {
        return new Round(
                folder,
                header(),
                terrain(),
                List.of(water("BRN", "Brannet", 1), water("PEL", "Pell", 3)),
                List.of(
                        site("BRN-01", "Ford at Tāne's mill", "BRN", "BR01", 503150, 5109420),
                        site("BRN-02", "Alder pool", "BRN", "BR02", 501880, 5106210),
                        site("PEL-01", "Mud flats", "PEL", "PE01", 522380, 5084260),
                        site("PEL-02", "Upper bend", "PEL", "PE02", 524070, 5086550)),
                pastVisits(),
                List.of(),
                List.of(
                        method("EFISH", "electrofishing", MethodKind.ELECTROFISHING),
                        method("TRAP", "nets overnight", MethodKind.NETTING),
                        method("SPOT", "spotlighting", MethodKind.SPOTLIGHTING),
                        method("RECORD_DRY", "dry record", MethodKind.DRY_RECORD)),
                new DecisionTable(
                        "method.dmn",
                        "survey-method",
                        "survey-method",
                        HitPolicy.UNIQUE,
                        List.of(),
                        List.of(),
                        List.of(),
                        "0123456789abcdef".repeat(4)),
                new Store(List.of(), List.of(), List.of(), List.of(), List.of()),
                List.of(person("imre", "Imre"), person("yusra", "Yusra"), person("oskar", "Oskar")),
                List.of(),
                List.of(),
                List.of(),
                biosecurity(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new CarePlace(
                        "H1",
                        "Ilver Cross hospital",
                        new MetricPoint(512000, 5097000),
                        Optional.of("day and night"),
                        Optional.empty())),
                HazardRegister.shipped(),
                new InputHash("ab".repeat(32), new TreeMap<>(Map.of("sites.csv", "cd".repeat(32)))));
    }

    private static RoundHeader header() {
        return new RoundHeader(
                "ilvermoor-2027",
                "Ilvermoor stream fish round 2027",
                "Ilvermoor Rivers Office",
                "EPSG:32627",
                ZONE,
                20270906,
                MONDAY,
                MONDAY.plusDays(4),
                List.of(),
                new Place("DEPOT", "Carrow Yard", new MetricPoint(512400, 5096300)),
                ReachSettings.fixed(new ReachRule(150, 10, SOURCE)),
                new DutyRules(660, 660, LocalTime.MIDNIGHT, LocalTime.of(5, 0), LocalTime.of(5, 0), 30, 15, 0, SOURCE),
                new LightRules(45, true, 60, SOURCE),
                new TideRules(120, 120, SOURCE),
                new TravelFallback(1.35, 45, 5, SOURCE),
                new ConductivityRule("linear", 0.02, SOURCE),
                115,
                1.25,
                new CheckInRules(60, 45, "office check-in", "112", SOURCE),
                5,
                Map.of(),
                0.5,
                List.of(),
                WadingProfile.NEW,
                SearchSettings.USUAL,
                List.of(),
                ElectricRules.DEFAULT,
                Optional.empty());
    }

    static CoordinateSystem crs() {
        return CoordinateSystem.named("EPSG:32627", SourcePlace.file("round.json"))
                .value()
                .orElseThrow();
    }

    private static Terrain terrain() {
        StreamNetwork network = new StreamNetwork(List.of(
                stream("BRN", new double[][] {
                    {500740, 5112960}, {502760, 5110310}, {503010, 5109640}, {503090, 5109560}, {503110, 5109490},
                    {503150, 5109420}, {503060, 5108500}, {502280, 5106950}, {501880, 5106210}, {501200, 5104100}
                }),
                stream("PEL", new double[][] {
                    {527300, 5090200}, {524070, 5086550}, {523150, 5085350}, {522380, 5084260}, {521000, 5081900}
                })));
        return new Terrain(
                crs(),
                network,
                List.of(),
                List.of(
                        new Parcel(
                                "P-12",
                                Optional.of("pending"),
                                SHAPES.toGeometry(new Envelope(503120, 503400, 5109300, 5109600))),
                        new Parcel(
                                "P-11",
                                Optional.of("yes"),
                                SHAPES.toGeometry(new Envelope(502900, 503120, 5109300, 5109600)))),
                List.of(new Barrier("X1", "BRN", "weir", new MetricPoint(503098, 5109540), Optional.empty())));
    }

    private static StreamLine stream(String code, double[][] places) {
        Coordinate[] line = new Coordinate[places.length];
        for (int i = 0; i < places.length; i++) {
            line[i] = new Coordinate(places[i][0], places[i][1]);
        }
        return new StreamLine(code, Optional.of(code + " stream"), code, SHAPES.createLineString(line));
    }

    private static Water water(String code, String name, int rank) {
        return new Water(code, name, code, 0, 100_000, rank, false, false, Optional.empty(), Optional.empty());
    }

    private static Site site(String id, String name, String stream, String shortCode, double eastM, double northM) {
        return new Site(
                id,
                name,
                stream,
                shortCode,
                new MetricPoint(eastM, northM),
                Priority.A,
                Optional.empty(),
                Optional.empty(),
                conditions(),
                Optional.of(true),
                OptionalDouble.of(250),
                Optional.of(!id.equals("PEL-01")),
                Optional.of("lay-by south of the bridge"),
                Optional.of(Bank.LEFT),
                Optional.of("H1"),
                OptionalInt.of(35),
                Optional.empty());
    }

    private static Conditions conditions() {
        return new Conditions(
                OptionalDouble.of(4.2),
                Optional.empty(),
                OptionalDouble.of(0.22),
                OptionalDouble.of(0.48),
                OptionalDouble.empty(),
                OptionalDouble.of(96),
                OptionalDouble.of(8),
                OptionalDouble.of(2.6),
                OptionalDouble.of(15.5));
    }

    private static List<PastVisit> pastVisits() {
        return List.of(new PastVisit(
                "BRN-01",
                LocalDate.of(2026, 9, 9),
                "EFISH",
                VisitPart.SURVEY,
                Optional.empty(),
                Optional.of(new ElectricSettings(60, 4, 24, 170)),
                OptionalDouble.of(101),
                Optional.of(ConductivityBasis.SPECIFIC_25C),
                OptionalDouble.of(15.1),
                OptionalInt.of(2150),
                OptionalInt.of(262),
                OptionalDouble.of(4.2),
                OptionalDouble.of(0.5),
                OptionalInt.of(3),
                OptionalInt.empty(),
                Optional.empty()));
    }

    private static Method method(String id, String label, MethodKind kind) {
        return new Method(id, label, kind, List.of(), SOURCE);
    }

    private static Person person(String id, String name) {
        return new Person(
                id, name, Set.of("bucket"), Optional.empty(), Optional.empty(), true, true, false, Optional.empty());
    }

    private static Biosecurity biosecurity() {
        return new Biosecurity(
                List.of(new Pest("LTW", "lattice weed", 3, Optional.empty())),
                List.of(),
                List.of(new Treatment(
                        "hot-dip-50",
                        "LTW",
                        Material.HARD,
                        "hot water",
                        OptionalDouble.empty(),
                        Optional.empty(),
                        OptionalDouble.of(50),
                        TreatmentMode.SOAK,
                        15,
                        0,
                        true,
                        EvidenceGrade.B,
                        SOURCE)),
                List.of(),
                List.of());
    }
}
