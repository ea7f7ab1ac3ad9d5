package org.wadeplan.planner.round;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wadeplan.hazards.register.HazardRegister;
import org.wadeplan.planner.method.DecisionTable;

/**
 * A whole round, read and checked.
 *
 * @param folder where it was read from
 * @param pastVisits oldest first
 * @param methodTable the decision table, parsed
 * @param hazardRegister the folder's own {@code hazards.json}, or the one that comes with the program
 * @param depths along the reaches, as far as they were measured
 * @param log what people agreed and did
 */
public record Round(
        Path folder,
        RoundHeader header,
        Terrain terrain,
        List<Water> waters,
        List<Site> sites,
        List<PastVisit> pastVisits,
        List<TravelLeg> travel,
        List<Method> methods,
        DecisionTable methodTable,
        Store store,
        List<Person> people,
        List<CrewDayRoster> roster,
        List<Permit> permits,
        List<Consent> consents,
        Biosecurity biosecurity,
        List<LowWater> tides,
        List<SiteHazard> siteHazards,
        List<DayForecast> forecast,
        List<CarePlace> care,
        HazardRegister hazardRegister,
        InputHash hash,
        List<DepthPoint> depths,
        FieldLog log) {

    /** A round of which no depths along the reaches are known and nothing was done yet. */
    public Round(
            Path folder,
            RoundHeader header,
            Terrain terrain,
            List<Water> waters,
            List<Site> sites,
            List<PastVisit> pastVisits,
            List<TravelLeg> travel,
            List<Method> methods,
            DecisionTable methodTable,
            Store store,
            List<Person> people,
            List<CrewDayRoster> roster,
            List<Permit> permits,
            List<Consent> consents,
            Biosecurity biosecurity,
            List<LowWater> tides,
            List<SiteHazard> siteHazards,
            List<DayForecast> forecast,
            List<CarePlace> care,
            HazardRegister hazardRegister,
            InputHash hash) {
        this(
                folder,
                header,
                terrain,
                waters,
                sites,
                pastVisits,
                travel,
                methods,
                methodTable,
                store,
                people,
                roster,
                permits,
                consents,
                biosecurity,
                tides,
                siteHazards,
                forecast,
                care,
                hazardRegister,
                hash,
                List.of(),
                FieldLog.EMPTY);
    }

    public Optional<Site> site(String id) {
        return sites.stream().filter(site -> site.id().equals(id)).findFirst();
    }

    /** The same round with one site replaced, such as by what was measured there on arrival. */
    public Round with(Site replacement) {
        List<Site> replaced = sites.stream()
                .map(site -> site.id().equals(replacement.id()) ? replacement : site)
                .toList();
        return changed(replaced, store, roster, biosecurity, log);
    }

    /** The same round with other knowledge of pests and treatments. */
    public Round with(Biosecurity other) {
        return changed(sites, store, roster, other, log);
    }

    /** The same round with another store. */
    public Round with(Store other) {
        return changed(sites, other, roster, biosecurity, log);
    }

    /** The same round with another log of what people agreed and did. */
    public Round with(FieldLog other) {
        return changed(sites, store, roster, biosecurity, other);
    }

    /** The same round with other crew-days. */
    public Round withRoster(List<CrewDayRoster> other) {
        return changed(sites, store, other, biosecurity, log);
    }

    private Round changed(
            List<Site> itsSites,
            Store itsStore,
            List<CrewDayRoster> itsRoster,
            Biosecurity itsBiosecurity,
            FieldLog itsLog) {
        return new Round(
                folder,
                header,
                terrain,
                waters,
                itsSites,
                pastVisits,
                travel,
                methods,
                methodTable,
                itsStore,
                people,
                itsRoster,
                permits,
                consents,
                itsBiosecurity,
                tides,
                siteHazards,
                forecast,
                care,
                hazardRegister,
                hash,
                depths,
                itsLog);
    }

    public Optional<Method> method(String id) {
        return methods.stream().filter(method -> method.id().equals(id)).findFirst();
    }

    public Optional<Person> person(String id) {
        return people.stream().filter(person -> person.id().equals(id)).findFirst();
    }

    public Optional<Water> water(String id) {
        return waters.stream().filter(water -> water.id().equals(id)).findFirst();
    }

    /** The water that holds the site, by its stream and its distance from the mouth; empty where no row covers it. */
    public Optional<Water> waterOf(Site site) {
        double fromMouthM = terrain.network().fromMouthM(site.stream(), site.start());
        return waters.stream()
                .filter(water -> water.stream().equals(site.stream())
                        && fromMouthM >= water.fromMouthMinM()
                        && fromMouthM <= water.fromMouthMaxM())
                .findFirst();
    }

    /** The drive from the table, in either direction; empty where the table lacks it. */
    public Optional<TravelLeg> leg(String from, String to) {
        return travel.stream()
                .filter(leg -> leg.from().equals(from) && leg.to().equals(to))
                .findFirst()
                .or(() -> travel.stream()
                        .filter(leg -> leg.from().equals(to) && leg.to().equals(from))
                        .findFirst());
    }
}
