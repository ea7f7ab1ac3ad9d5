package org.wadeplan.planner.week;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.LowWater;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.TravelLeg;

/** A round with some of its tables changed. */
public final class RoundChange {

    private final Round from;
    private RoundHeader header;
    private List<Site> sites;
    private List<TravelLeg> travel;
    private Store store;
    private List<Person> people;
    private List<CrewDayRoster> roster;
    private List<Permit> permits;
    private List<Consent> consents;
    private List<LowWater> tides;

    private RoundChange(Round from) {
        this.from = from;
        header = from.header();
        sites = from.sites();
        travel = from.travel();
        store = from.store();
        people = from.people();
        roster = from.roster();
        permits = from.permits();
        consents = from.consents();
        tides = from.tides();
    }

    public static RoundChange of(Round from) {
        return new RoundChange(from);
    }

    public RoundChange header(UnaryOperator<RoundHeader> change) {
        header = change.apply(header);
        return this;
    }

    public RoundChange keepSites(Predicate<Site> keep) {
        sites = sites.stream().filter(keep).toList();
        return this;
    }

    public RoundChange travel(List<TravelLeg> legs) {
        travel = legs;
        return this;
    }

    public RoundChange store(UnaryOperator<Store> change) {
        store = change.apply(store);
        return this;
    }

    public RoundChange people(UnaryOperator<Person> change) {
        people = people.stream().map(change).toList();
        return this;
    }

    public RoundChange roster(UnaryOperator<CrewDayRoster> change) {
        roster = roster.stream().map(change).toList();
        return this;
    }

    public RoundChange keepRoster(Predicate<CrewDayRoster> keep) {
        roster = roster.stream().filter(keep).toList();
        return this;
    }

    public RoundChange permits(UnaryOperator<Permit> change) {
        permits = permits.stream().map(change).toList();
        return this;
    }

    public RoundChange consents(UnaryOperator<Consent> change) {
        consents = consents.stream().map(change).toList();
        return this;
    }

    public RoundChange keepConsents(Predicate<Consent> keep) {
        consents = consents.stream().filter(keep).toList();
        return this;
    }

    public RoundChange tides(List<LowWater> low) {
        tides = low;
        return this;
    }

    public Round round() {
        return new Round(
                from.folder(),
                header,
                from.terrain(),
                from.waters(),
                sites,
                from.pastVisits(),
                travel,
                from.methods(),
                from.methodTable(),
                store,
                people,
                roster,
                permits,
                consents,
                biosecurity(),
                tides,
                from.siteHazards(),
                from.forecast(),
                from.care(),
                from.hazardRegister(),
                from.hash());
    }

    private Biosecurity biosecurity() {
        return from.biosecurity();
    }
}
