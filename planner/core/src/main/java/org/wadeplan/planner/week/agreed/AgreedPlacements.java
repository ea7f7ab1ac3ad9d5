package org.wadeplan.planner.week.agreed;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.permission.PermissionCheck;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Placement;
import org.wadeplan.planner.week.TimeWindow;
import org.wadeplan.planner.week.WindowFinder;
import org.wadeplan.planner.week.WindowSearch;

/** Says of each agreed visit which window it stands in, or that it stands in none. */
final class AgreedPlacements {

    private final Round round;
    private final WindowFinder windows;

    AgreedPlacements(Round round) {
        this.round = round;
        this.windows = new WindowFinder(round);
    }

    List<Placement> of(List<AgreedVisit> visits) {
        return visits.stream().map(this::placement).toList();
    }

    private Placement placement(AgreedVisit visit) {
        Permission permission = PermissionCheck.of(
                round, visit.site(), visit.method(), visit.task().date());
        WindowSearch search =
                windows.find(visit.site(), visit.part(), visit.effort().p80Min(), permission);
        Optional<TimeWindow> window = search.fitting().stream()
                .filter(one ->
                        !one.opens().isAfter(visit.start()) && !one.closes().isBefore(visit.end()))
                .findFirst();
        return window.map(one -> inside(visit, one)).orElseGet(() -> outside(visit, search));
    }

    private static Placement inside(AgreedVisit visit, TimeWindow window) {
        return new Placement(
                visit.site().id(),
                visit.part().part(),
                Optional.of(window.opens()),
                Optional.of(window.closes()),
                "as agreed; from: " + window.opensBecause() + "; until: " + window.closesBecause(),
                Math.toIntExact(Duration.between(visit.end(), window.closes()).toMinutes()));
    }

    private static Placement outside(AgreedVisit visit, WindowSearch search) {
        String why =
                search.reasons().isEmpty() ? "outside every window of that day" : String.join(" ", search.reasons());
        return new Placement(
                visit.site().id(),
                visit.part().part(),
                Optional.empty(),
                Optional.empty(),
                "as agreed, in no window that was found: " + why,
                0);
    }
}
