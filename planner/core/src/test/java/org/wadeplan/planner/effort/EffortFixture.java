package org.wadeplan.planner.effort;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.ConductivityBasis;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.ElectricRules;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.Light;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.PackSeconds;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Priority;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.round.VoltageCeiling;
import org.wadeplan.planner.round.WetState;

/** Small invented values for the tests of effort. */
final class EffortFixture {

    static final Method EFISH = method("EFISH", MethodKind.ELECTROFISHING, part(VisitPart.SURVEY, 1, 165, 22, 1.245));
    static final Method EFISH_AM =
            method("EFISH_AM", MethodKind.ELECTROFISHING, part(VisitPart.SURVEY, 1, 165, 22, 1.145));
    static final Method TRAP = method(
            "TRAP", MethodKind.NETTING, part(VisitPart.LIFT, 2, 90, 0, 1.275), part(VisitPart.SET, 1, 60, 0, 1.25));
    static final List<Method> METHODS = List.of(EFISH, EFISH_AM, TRAP);

    /** Demo scenario 4.6, an invented agency's figures. */
    static final List<PackSeconds> PACKS = List.of(
            new PackSeconds(150, 2400, "invented"),
            new PackSeconds(300, 2000, "invented"),
            new PackSeconds(450, 1700, "invented"),
            new PackSeconds(600, 1400, "invented"));

    static final List<VoltageCeiling> CEILINGS = List.of(
            ceiling(0, 1100, OptionalDouble.empty()),
            ceiling(100, 800, OptionalDouble.empty()),
            ceiling(300, 400, OptionalDouble.of(5)));

    static final ElectricSettings SETTINGS = new ElectricSettings(60, 4, 24, 165);

    private EffortFixture() {}

    static EffortRules rules() {
        return new EffortRules(
                new ConductivityRule("linear", 0.02, "invented"),
                new PowerTransfer(115),
                1.25,
                PACKS,
                CEILINGS,
                ElectricRules.DEFAULT);
    }

    static EffortPlanner planner(PastVisit... visits) {
        return EffortPlanner.of(rules(), List.of(visits), METHODS);
    }

    static Site site(String id, OptionalDouble widthM, OptionalDouble ambientUsCm, OptionalDouble waterTempC) {
        Conditions conditions = new Conditions(
                widthM,
                Optional.of(WetState.FLOWING),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                ambientUsCm,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                waterTempC);
        return new Site(
                id,
                id,
                "BRN",
                "SITE",
                new MetricPoint(500_000, 5_100_000),
                Priority.A,
                Optional.empty(),
                Optional.empty(),
                conditions,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Bank.LEFT),
                Optional.empty(),
                OptionalInt.empty(),
                Optional.empty());
    }

    static Site site(double ambientUsCm) {
        return site("BRN-01", OptionalDouble.of(4), OptionalDouble.of(ambientUsCm), OptionalDouble.of(15));
    }

    /** A past electrofishing visit that recorded nothing yet; the methods below add what it recorded. */
    static PastVisit survey(String date, String method, int onSiteMin) {
        return visit("BRN-01", date, method, OptionalInt.empty(), OptionalInt.of(onSiteMin), OptionalDouble.empty());
    }

    static PastVisit shocked(String site, int shockS, double widthM) {
        return visit(
                site, "2026-09-01", "EFISH", OptionalInt.of(shockS), OptionalInt.empty(), OptionalDouble.of(widthM));
    }

    static PastVisit withSettings(
            String date,
            ElectricSettings settings,
            OptionalDouble conductivity,
            Optional<ConductivityBasis> basis,
            OptionalDouble tempC) {
        return new PastVisit(
                "BRN-01",
                LocalDate.parse(date),
                "EFISH",
                VisitPart.SURVEY,
                Optional.empty(),
                Optional.of(settings),
                conductivity,
                basis,
                tempC,
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty());
    }

    static PastVisit visit(
            String site, String date, String method, OptionalInt shockS, OptionalInt onSiteMin, OptionalDouble widthM) {
        return new PastVisit(
                site,
                LocalDate.parse(date),
                method,
                VisitPart.SURVEY,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                shockS,
                onSiteMin,
                widthM,
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.empty());
    }

    static PastVisit counted(String site, int fish) {
        PastVisit plain =
                visit(site, "2026-09-01", "EFISH", OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty());
        return new PastVisit(
                plain.site(),
                plain.date(),
                plain.method(),
                plain.part(),
                plain.start(),
                plain.settings(),
                plain.conductivityUsCm(),
                plain.conductivityBasis(),
                plain.waterTempC(),
                plain.shockS(),
                plain.onSiteMin(),
                plain.widthM(),
                plain.maxDepthM(),
                plain.crewSize(),
                OptionalInt.of(fish),
                plain.note());
    }

    static Method perFish(Method method, double perFishMin) {
        MethodPart old = method.parts().get(0);
        MethodPart part = new MethodPart(
                old.part(),
                old.order(),
                old.light(),
                old.latestFinish(),
                old.crewMin(),
                old.operatorsMin(),
                old.nettersMin(),
                old.firstAidersMin(),
                old.inWaterMin(),
                old.p50FixedMin(),
                old.p50PerWidthMMin(),
                perFishMin,
                old.p80Factor(),
                old.gapMinMin(),
                old.gapMaxMin(),
                old.source());
        return new Method(method.id(), method.label(), method.kind(), List.of(part), method.source());
    }

    private static VoltageCeiling ceiling(double fromUsCm, double maxV, OptionalDouble maxMs) {
        return new VoltageCeiling(
                fromUsCm, maxV, OptionalDouble.of(100), OptionalDouble.of(70), maxMs, "invented sheet");
    }

    private static Method method(String id, MethodKind kind, MethodPart... parts) {
        return new Method(id, id, kind, List.of(parts), "invented");
    }

    private static MethodPart part(VisitPart part, int order, double fixedMin, double perWidthMMin, double factor) {
        return new MethodPart(
                part,
                order,
                Light.DAY,
                Optional.empty(),
                3,
                1,
                1,
                2,
                180,
                fixedMin,
                perWidthMMin,
                0,
                factor,
                OptionalInt.empty(),
                OptionalInt.empty(),
                "invented sheet");
    }
}
