package org.wadeplan.planner.decon.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.LaneMoment;
import org.wadeplan.planner.decon.ledger.OpenExposures;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.decon.trace.TraceReport.OtherWater;
import org.wadeplan.planner.decon.trace.TraceReport.Spread;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/**
 * Holds each other water against the find, both ways: whether something brought the pest there, and whether something could
 * have brought it from there. What speaks against a carry is said as well as what speaks for it.
 */
final class OtherWaters {

    private final Round round;
    private final FindSpan span;
    private final ExposureLedger ledger;
    private final OpenExposures exposures;
    private final TraceClock clock;

    OtherWaters(Round round, FindSpan span, ExposureLedger ledger) {
        this.round = round;
        this.span = span;
        this.ledger = ledger;
        this.exposures = new OpenExposures(round);
        this.clock = new TraceClock(round.header().zone());
    }

    /** Something that was in another water and came to that of the find. */
    private record Route(Lane lane, Touch there, Touch here, boolean treated) {}

    List<OtherWater> of(List<Spread> spreads) {
        return round.waters().stream()
                .filter(water -> !water.id().equals(span.find().water()))
                .map(water -> other(water, spreads))
                .toList();
    }

    private OtherWater other(Water water, List<Spread> spreads) {
        List<Spread> into = spreads.stream()
                .filter(spread -> spread.water().equals(water.id()))
                .toList();
        List<Route> open =
                routes(water).stream().filter(route -> !route.treated()).toList();
        String status = FindSpan.words(round, water.id(), span.find().pest());
        List<String> because = new ArrayList<>();
        because.add(into.isEmpty() ? nothingWent(water) : "may receive it: " + went(into));
        because.addAll(bySets(water));
        because.addAll(byOpen(water, open));
        because.add("on file about " + span.find().pest() + " there: " + status);
        boolean below = below(water);
        if (below) {
            because.add(
                    0,
                    "it lies below on the same stream: what is in "
                            + span.find().water() + " may drift there; nobody needs to carry it");
        }
        boolean setsClear = !below
                && into.isEmpty()
                && open.stream().allMatch(route -> route.lane().item());
        return new OtherWater(
                water.id(),
                water.name(),
                into.isEmpty() && !below,
                open.isEmpty(),
                setsClear,
                status,
                List.copyOf(because));
    }

    /** Downstream of the find's water on the same stream, with no other water between that would make it farther. */
    private boolean below(Water water) {
        return round.water(span.find().water())
                .filter(find -> find.stream().equals(water.stream()) && water.fromMouthMaxM() <= find.fromMouthMinM())
                .isPresent();
    }

    private String nothingWent(Water water) {
        return "nothing that was in " + span.find().water() + " since "
                + span.lastClear().map(day -> "its last clear visit on " + day).orElse("the ledger begins")
                + " goes into " + water.id() + " before it is treated against "
                + span.find().pest();
    }

    /** Each thing once, with the first visit that it goes to. */
    private String went(List<Spread> into) {
        Map<String, String> words = new LinkedHashMap<>();
        into.forEach(spread -> words.putIfAbsent(
                spread.id(),
                spread.id() + " (" + spread.from() + ", then " + spread.where() + " at " + clock.at(spread.at())
                        + ")"));
        return String.join(", ", words.values());
    }

    /** One sentence for each kit set that was at the find's water when the pest was seen or before. */
    private List<String> bySets(Water water) {
        List<String> words = new ArrayList<>();
        for (Lane lane : ledger.kitSets()) {
            arrival(lane).ifPresent(here -> words.add(bySet(water, lane, here)));
        }
        return words;
    }

    private String bySet(Water water, Lane lane, Touch here) {
        List<Route> routes = routes(water).stream()
                .filter(route -> route.lane().equals(lane))
                .toList();
        Optional<Route> open = routes.stream().filter(route -> !route.treated()).findFirst();
        if (open.isPresent()) {
            return lane.id() + " may have brought it: at " + open.get().there().where() + ", then at "
                    + open.get().here().where() + " with no treatment against "
                    + span.find().pest() + " in between";
        }
        LaneMoment moment = LaneMoment.of(round, lane, exposures, here.from().minusSeconds(1));
        String state = lane.id() + " was " + moment.state().word() + " when it came to " + here.where() + " at "
                + clock.at(here.from()) + ", since " + clock.at(moment.since());
        return routes.isEmpty()
                ? state + ", and had not touched " + water.id() + " on file: so it did not come from " + water.id()
                        + " with " + lane.id()
                : state + ", treated against " + span.find().pest() + " since it was at "
                        + routes.get(0).there().where() + ": so it did not come from " + water.id() + " with "
                        + lane.id();
    }

    private List<String> byOpen(Water water, List<Route> open) {
        Set<String> items = new LinkedHashSet<>();
        open.stream()
                .filter(route -> route.lane().item())
                .forEach(route -> items.add(route.lane().id()));
        if (items.isEmpty()) {
            return List.of();
        }
        Route first = open.stream()
                .filter(route -> route.lane().item())
                .min(Comparator.comparing(route -> route.here().from()))
                .orElseThrow();
        return List.of("not ruled out for loose items: " + String.join(", ", items)
                + " went from " + water.id() + " to " + span.find().water() + " without a treatment against "
                + span.find().pest() + " in between (first " + first.lane().id() + ": "
                + first.there().where()
                + ", then " + first.here().where() + " at "
                + clock.at(first.here().from()) + ")");
    }

    private List<Route> routes(Water water) {
        List<Route> routes = new ArrayList<>();
        for (Lane lane : ledger.lanes()) {
            for (Touch here : lane.touches()) {
                if (counts(here)) {
                    lane.touches().stream()
                            .filter(there -> there.water().equals(water.id())
                                    && !there.until().isAfter(here.from()))
                            .map(there -> new Route(
                                    lane,
                                    there,
                                    here,
                                    Support.treated(
                                            round, lane, there, span.find().pest(), here.from())))
                            .forEach(routes::add);
                }
            }
        }
        return routes;
    }

    private Optional<Touch> arrival(Lane lane) {
        return lane.touches().stream().filter(this::counts).findFirst();
    }

    /** A stay in the find's water that had begun when the pest was seen, since the last clear visit. */
    private boolean counts(Touch here) {
        return here.water().equals(span.find().water())
                && !here.from().isAfter(span.find().seen())
                && span.reaches(here.until(), round.header().zone());
    }
}
