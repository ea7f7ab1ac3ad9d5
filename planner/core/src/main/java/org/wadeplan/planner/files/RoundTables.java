package org.wadeplan.planner.files;

import java.util.List;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.CertificateTable.CertificateOf;
import org.wadeplan.planner.files.MethodPartTable.PartOf;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Barrier;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.CarePlace;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.DayForecast;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.DepthPoint;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.LowWater;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.PackSeconds;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.SiteHazard;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.TravelLeg;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.VoltageCeiling;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WaterPest;

/** Every table of the folder, each read on its own, so that a broken one hides nothing in the others. */
record RoundTables(
        Table<Water> waters,
        Table<Site> sites,
        Table<PastVisit> pastVisits,
        Table<TravelLeg> travel,
        Table<Method> methods,
        Table<PartOf> methodParts,
        Table<KitNeed> kitNeeds,
        Table<KitSet> kitSets,
        Table<StoreItem> store,
        Table<CertificateOf> certificates,
        Table<Person> people,
        Table<CrewDayRoster> crewDays,
        Table<Permit> permits,
        Table<Consent> consents,
        Table<Pest> pests,
        Table<WaterPest> waterPests,
        Table<Treatment> treatments,
        Table<DeconStepRule> deconSteps,
        Table<DeconResource> deconResources,
        Table<Barrier> barriers,
        Table<LowWater> tides,
        Table<DepthPoint> depths,
        Table<SiteHazard> siteHazards,
        Table<DayForecast> forecast,
        Table<CarePlace> care,
        Table<PackSeconds> packSeconds,
        Table<VoltageCeiling> voltageCeilings,
        Table<GearClass> gearClasses,
        Table<DeconRule> deconRules,
        Table<AgreedTask> agreedWeek,
        Table<BathRecord> baths,
        Table<CleaningRecord> cleanings,
        Table<LoadTick> loadTicks) {

    static RoundTables read(RoundFolder folder) {
        return new RoundTables(
                Table.read(folder, WaterTable.KIND),
                Table.read(folder, SiteTable.KIND),
                Table.read(folder, PastVisitTable.KIND),
                Table.read(folder, TravelTable.KIND),
                Table.read(folder, MethodTable.KIND),
                Table.read(folder, MethodPartTable.KIND),
                Table.read(folder, KitNeedTable.KIND),
                Table.read(folder, KitSetTable.KIND),
                Table.read(folder, StoreTable.KIND),
                Table.read(folder, CertificateTable.KIND),
                Table.read(folder, PersonTable.KIND),
                Table.read(folder, CrewDayTable.KIND),
                Table.read(folder, PermitTable.KIND),
                Table.read(folder, ConsentTable.KIND),
                Table.read(folder, PestTable.KIND),
                Table.read(folder, WaterPestTable.KIND),
                Table.readOrShipped(folder, TreatmentTable.KIND),
                Table.read(folder, DeconStepTable.KIND),
                Table.read(folder, DeconResourceTable.KIND),
                Table.read(folder, BarrierTable.KIND),
                Table.read(folder, TideTable.KIND),
                Table.read(folder, DepthTable.KIND),
                Table.read(folder, SiteHazardTable.KIND),
                Table.read(folder, ForecastTable.KIND),
                Table.read(folder, CareTable.KIND),
                Table.read(folder, PackSecondsTable.KIND),
                Table.read(folder, VoltageCeilingTable.KIND),
                Table.readOrShipped(folder, GearClassTable.KIND),
                Table.readOrShipped(folder, DeconRuleTable.KIND),
                Table.read(folder, AgreedTable.KIND),
                Table.read(folder, BathTable.KIND),
                Table.read(folder, CleaningTable.KIND),
                Table.read(folder, LoadTickTable.KIND));
    }

    Stream<Table<?>> all() {
        return Stream.of(
                waters,
                sites,
                pastVisits,
                travel,
                methods,
                methodParts,
                kitNeeds,
                kitSets,
                store,
                certificates,
                people,
                crewDays,
                permits,
                consents,
                pests,
                waterPests,
                treatments,
                deconSteps,
                deconResources,
                barriers,
                tides,
                depths,
                siteHazards,
                forecast,
                care,
                packSeconds,
                voltageCeilings,
                gearClasses,
                deconRules,
                agreedWeek,
                baths,
                cleanings,
                loadTicks);
    }

    List<Problem> problems() {
        return all().flatMap(table -> table.problems().stream()).toList();
    }
}
