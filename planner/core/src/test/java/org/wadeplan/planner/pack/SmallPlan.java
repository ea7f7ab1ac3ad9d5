package org.wadeplan.planner.pack;

import static org.wadeplan.planner.pack.SmallRound.MONDAY;
import static org.wadeplan.planner.pack.SmallRound.SOURCE;
import static org.wadeplan.planner.pack.SmallRound.at;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachLayer;
import org.wadeplan.geo.reach.SiteStart;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround.Cover;
import org.wadeplan.planner.decon.TurnaroundTable;
import org.wadeplan.planner.effort.BatteryNeed;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.effort.ShockTime;
import org.wadeplan.planner.effort.StartSettings;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodOutcome;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.plan.PlanVersion;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.round.VoltageCeiling;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.Placement;
import org.wadeplan.planner.week.Unplaced;
import org.wadeplan.planner.week.WeekPlan;

/** A hand-made plan for the small round: two days of crew A, one of crew B that runs past midnight. */
public final class SmallPlan {

    static final String VERSION = "7f3a9c21e0";
    private static final List<String> CREW = List.of("imre", "yusra", "oskar");

    private SmallPlan() {}

    public static RoundPlan of(Round round) {
        return new RoundPlan(
                round.header().id(),
                new PlanVersion(VERSION, round.hash().whole(), 20270906, 2000, "0.1.0"),
                round.sites().stream().map(site -> reach(round, site)).toList(),
                List.of(
                        chosen("BRN-01", 5, "EFISH"),
                        chosen("BRN-02", 1, "RECORD_DRY"),
                        chosen("PEL-01", 15, "TRAP"),
                        chosen("PEL-02", 12, "SPOT")),
                List.of(
                        efishEffort(),
                        new VisitEffort(
                                "PEL-01", "TRAP", List.of(), Optional.empty(), Optional.empty(), Optional.empty())),
                permissions(),
                new TurnaroundTable(List.of()),
                week(),
                kit(),
                List.of(new VisitBriefing("BRN-01", MONDAY, "A", VisitPart.SURVEY, SmallBriefings.electrofishing())),
                true,
                List.of(Problem.warning(
                        "margin-small",
                        SourcePlace.part("method.dmn", "PEL-01"),
                        "a depth 0.06 m greater would change the method",
                        "",
                        "measure first")));
    }

    static Reach reach(Round round, Site site) {
        ReachLayer layer = new ReachLayer(
                round.terrain().network(),
                round.terrain().crs(),
                round.header().reach().protocol().fixedRule().orElseThrow());
        SiteStart start = new SiteStart(
                site.id(),
                site.stream(),
                site.shortCode(),
                site.start(),
                site.stakeBank().orElseThrow());
        return layer.lay(start, SourcePlace.file("sites.csv")).value().orElseThrow();
    }

    private static MethodDecision chosen(String site, int rule, String method) {
        return new MethodDecision(
                site,
                new MethodOutcome.Chosen(
                        rule,
                        "r" + rule,
                        method,
                        OptionalInt.of(3),
                        List.of(
                                new MethodOutcome.Reading("wet state", "\"flowing\"", "\"flowing\""),
                                new MethodOutcome.Reading("max depth m", "0.48", "<=0.8"),
                                new MethodOutcome.Reading("conductivity µS/cm", "96", "[15..600]"))),
                "survey-method",
                "0123456789abcdef".repeat(4));
    }

    private static VisitEffort efishEffort() {
        return new VisitEffort(
                "BRN-01",
                "EFISH",
                List.of(new PartEffort(VisitPart.SURVEY, 265, 300, 4, "four earlier visits, 251 to 290 min")),
                Optional.of(new StartSettings(
                        new ElectricSettings(60, 4, 24, 170),
                        LocalDate.of(2026, 9, 9),
                        OptionalDouble.of(81),
                        OptionalDouble.of(96),
                        OptionalInt.of(165),
                        "power transfer, fish 115 µS/cm",
                        List.of("Water above 18 °C: shorter bursts, cooler buckets."),
                        Optional.of(new VoltageCeiling(
                                0,
                                1100,
                                OptionalDouble.of(100),
                                OptionalDouble.of(70),
                                OptionalDouble.empty(),
                                SmallRound.SOURCE)))),
                Optional.of(new BatteryNeed(2150, 2400, 1.25, 2, "1.25 × 2150 s ÷ 2400 s, rounded up")),
                Optional.of(new ShockTime(2150, 2300, 4, "median of 4 earlier visits")));
    }

    private static List<Permission> permissions() {
        return List.of(
                permission("BRN-01", "EFISH", 0, List.of()),
                permission("BRN-02", "RECORD_DRY", 0, List.of()),
                permission("PEL-01", "TRAP", 0, List.of("Permit P-PEL is pending.")),
                permission("PEL-01", "TRAP", 1, List.of("Permit P-PEL is pending.")),
                permission("PEL-02", "SPOT", 0, List.of()));
    }

    private static Permission permission(String site, String method, int day, List<String> awaiting) {
        return new Permission(
                site,
                method,
                MONDAY.plusDays(day),
                List.of(),
                awaiting,
                List.of("Ring the holder the evening before.", "Key 4."),
                Optional.of(LocalTime.of(7, 15)),
                Optional.of(LocalTime.of(22, 0)));
    }

    private static WeekPlan week() {
        return new WeekPlan(
                List.of(mondayA(), mondayB(), tuesdayA()),
                List.of(decon("K1", "A", 0, "17:15"), decon("T2", "A", 1, "10:00")),
                List.of(new Placement(
                        "PEL-01",
                        VisitPart.SET,
                        Optional.of(at(0, "14:20")),
                        Optional.of(at(0, "18:20")),
                        "tide, low water 16:20 ± 2 h",
                        40)),
                List.of(new Unplaced("OUN-02", "EFISH", List.of("Consent refused on 3 September."))),
                List.of(),
                List.of("0 sites of priority A left out", "1 change from an infested to a cleaner water"));
    }

    private static CrewDay mondayA() {
        return new CrewDay(
                "A",
                MONDAY,
                CREW,
                "V1",
                List.of(
                        plain(ActivityKind.LOAD, at(0, "07:30"), at(0, "08:00"), "DEPOT"),
                        plain(ActivityKind.TRAVEL, at(0, "08:00"), at(0, "08:30"), "BRN-01"),
                        visit("BRN-01", "EFISH", VisitPart.SURVEY, 0, "08:30", "13:30", "K1"),
                        plain(ActivityKind.TRAVEL, at(0, "13:30"), at(0, "13:45"), "BRN-02"),
                        visit("BRN-02", "RECORD_DRY", VisitPart.DRY_CHECK, 0, "13:45", "14:25", "K1"),
                        plain(ActivityKind.TRAVEL, at(0, "14:25"), at(0, "15:25"), "PEL-01"),
                        visit("PEL-01", "TRAP", VisitPart.SET, 0, "15:25", "16:30", "T2"),
                        plain(ActivityKind.TRAVEL, at(0, "16:30"), at(0, "17:00"), "DEPOT"),
                        plain(ActivityKind.UNLOAD, at(0, "17:00"), at(0, "17:15"), "DEPOT"),
                        plain(ActivityKind.DECON, at(0, "17:15"), at(0, "18:15"), "DEPOT")));
    }

    private static CrewDay mondayB() {
        return new CrewDay(
                "B",
                MONDAY,
                List.of("yusra", "oskar"),
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
                CREW,
                "V1",
                List.of(
                        plain(ActivityKind.LOAD, at(1, "06:30"), at(1, "07:00"), "DEPOT"),
                        visit("PEL-01", "TRAP", VisitPart.LIFT, 1, "07:30", "09:30", "T2"),
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

    private static DeconTask decon(String kitSet, String crew, int day, String from) {
        return new DeconTask(
                kitSet,
                crew,
                List.of("PEL"),
                at(day, from),
                at(day, from).plusSeconds(3600),
                at(day, from).plusSeconds(13 * 3600),
                List.of(
                        new DeconStep(
                                "brush", "brush all mud and weed off", 20, true, Optional.empty(), Optional.empty()),
                        new DeconStep(
                                "pick", "pick fragments from seams", 15, true, Optional.empty(), Optional.empty()),
                        new DeconStep("soak", "hot dip", 15, true, Optional.of("hot bay"), Optional.of("50 °C")),
                        new DeconStep("dry", "hang to dry", 720, false, Optional.of("drying room"), Optional.empty())),
                List.of(new Cover("LTW", Material.HARD, "hot-dip-50", EvidenceGrade.B, SOURCE)),
                "Lattice weed is known in the Pell.");
    }

    private static KitPlan kit() {
        LoadLine pack = new LoadLine(
                "electric box",
                "battery-pack",
                "battery pack",
                2,
                "",
                List.of("P1", "P2"),
                Optional.empty(),
                List.of("BRN-01"));
        LoadLine unit = new LoadLine(
                "electric box",
                "backpack-unit",
                "backpack unit",
                1,
                "",
                List.of("E1"),
                Optional.of(MONDAY.plusDays(1)),
                List.of("BRN-01"));
        LoadLine fyke = new LoadLine(
                "net crate", "fyke", "fyke net", 5, "", List.of("T2"), Optional.empty(), List.of("PEL-01"));
        return new KitPlan(
                List.of(new CrewDayLoad("A", MONDAY, List.of(unit, pack, fyke))),
                List.of(new Shortage(
                        MONDAY, List.of("A"), "fyke", 6, 5, "T2 has a torn fyke.", "Mend it or borrow one.")));
    }
}
