package org.wadeplan.planner.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.ReachLayer;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;
import org.wadeplan.geo.reach.SiteStart;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Lays the reach of every site, as long as the protocol says for its width, with its stakes on a bank. */
public final class SiteReaches {

    private static final String SITES = "sites.csv";

    private final Round round;
    private final StreamNetwork network;
    private final Widths widths;
    private final RoundAccess access;

    public SiteReaches(Round round) {
        this.round = round;
        this.network = round.terrain().network();
        this.widths = new Widths(round);
        this.access = RoundAccess.of(round);
    }

    /** The reaches that could be laid, in the order of the site list, with what stood in the way of the others. */
    public Checked<List<Reach>> lay() {
        List<Reach> reaches = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Site site : round.sites()) {
            Checked<Reach> laid = lay(site);
            laid.value().ifPresent(reaches::add);
            problems.addAll(laid.problems());
        }
        return Checked.of(reaches, problems);
    }

    /** One site's reach. */
    public Checked<Reach> lay(Site site) {
        SourcePlace place = SourcePlace.part(SITES, site.id());
        Sizing sizing = round.header().reach().protocol().at(width(site));
        if (sizing instanceof Sizing.Unsized unsized) {
            return Checked.failed(Problem.error(
                    "reach-length-unknown",
                    place,
                    "no length of reach: " + unsized.reason(),
                    "a width, or a rule that needs none",
                    "give width_m, or a widthCurve in round.json"));
        }
        ReachLayer layer = new ReachLayer(network, round.terrain().crs(), ((Sizing.Sized) sizing).rule());
        List<Problem> notes = new ArrayList<>();
        Bank bank = site.stakeBank().orElseGet(() -> suggested(site, place, notes));
        return layer.lay(new SiteStart(site.id(), site.stream(), site.shortCode(), site.start(), bank), place)
                .with(notes);
    }

    /** The bank that people come from; true left, with a note, where no way in is known. */
    private Bank suggested(Site site, SourcePlace place, List<Problem> notes) {
        Optional<Bank> bank = network.number(site.stream()).isPresent()
                ? access.walkIn(start(site)).map(walk -> Bank.of(walk.leave(), network.measure(site.stream())))
                : Optional.empty();
        notes.add(Problem.note(
                "stake-bank-suggested",
                place,
                bank.map(side -> "no stake_bank; the side that people come from was taken: true "
                                + (side == Bank.LEFT ? "left" : "right"))
                        .orElse("no stake_bank and no way in is known; true left was taken"),
                "left or right in stake_bank",
                "choose the bank in the field: where it can be seen and reached"));
        return bank.orElse(Bank.LEFT);
    }

    private LinePlace start(Site site) {
        return new LinePlace(
                network.number(site.stream()).orElseThrow(), network.chainageM(site.stream(), site.start()));
    }

    /** The site's mean width: its own, of past visits, or by the round's curve; empty where nobody knows. */
    public Optional<MeanWidth> width(Site site) {
        return network.number(site.stream()).isEmpty()
                ? widths.known(site)
                : widths.known(site).or(() -> widths.byCurve(start(site)));
    }

    /** The length that the protocol gives at a site, or why it gives none. */
    public Sizing sizing(Site site) {
        return round.header().reach().protocol().at(width(site));
    }

    /** The length that the protocol gives at a place without a site, by the round's width curve where it needs a width. */
    public Sizing sizing(LinePlace place) {
        return round.header().reach().protocol().at(widths.byCurve(place));
    }

    /** How the length at a site comes about, or why there is none. */
    String sizeWords(Site site) {
        Sizing sizing = sizing(site);
        return sizing instanceof Sizing.Sized sized ? sized.words() : ((Sizing.Unsized) sizing).reason();
    }
}
