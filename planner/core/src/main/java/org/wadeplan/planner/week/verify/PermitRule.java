package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** Fish are handled only under a permit for the catchment, the method and the day, outside closed seasons, after notice. */
final class PermitRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            String method = visit.activity().method().orElse("");
            boolean fishless = facts.round()
                    .method(method)
                    .filter(one -> one.kind() == MethodKind.DRY_RECORD)
                    .isPresent();
            if (visit.site().isEmpty() || fishless) {
                continue;
            }
            String catchment = facts.round()
                    .terrain()
                    .network()
                    .line(visit.site().get().stream())
                    .map(StreamLine::catchment)
                    .orElse("");
            List<Permit> held = facts.round().permits().stream()
                    .filter(permit -> permit.catchment().equals(catchment) && names(permit, method))
                    .filter(permit -> allows(permit, visit.day().date()))
                    .toList();
            if (held.isEmpty()) {
                problems.add(PlanFacts.broken(
                        "permit",
                        visit.name(),
                        "no permit in " + catchment + " allows " + method + " on "
                                + visit.day().date(),
                        "a permit that covers it"));
            } else if (held.stream().noneMatch(permit -> permit.status() == Permit.PermitStatus.GRANTED)) {
                problems.add(PlanFacts.doubtful(
                        "permit", visit.name(), "NOT AUTHORISED: the permit is pending", "a granted permit"));
            }
        }
        return problems;
    }

    private static boolean names(Permit permit, String method) {
        List<String> listed = permit.methods();
        return listed.contains(method)
                || listed.contains("all")
                || (method.equals("EFISH_AM") && listed.contains("EFISH"));
    }

    private static boolean allows(Permit permit, LocalDate date) {
        boolean runs = !date.isBefore(permit.validFrom()) && !date.isAfter(permit.validUntil());
        boolean closed =
                (permit.closedFrom().isPresent() || permit.closedUntil().isPresent())
                        && !date.isBefore(permit.closedFrom().orElse(LocalDate.MIN))
                        && !date.isAfter(permit.closedUntil().orElse(LocalDate.MAX));
        boolean full = permit.takeCap().filter(cap -> cap.used() >= cap.cap()).isPresent();
        return runs && !closed && !full && permit.status() != Permit.PermitStatus.REFUSED && noticed(permit, date);
    }

    /** So many whole working days lie between the day of notice and the visit; no notice yet is not yet late. */
    private static boolean noticed(Permit permit, LocalDate date) {
        if (permit.notifyWorkingDays().isEmpty() || permit.notifiedOn().isEmpty()) {
            return true;
        }
        long clear = permit.notifiedOn().get().plusDays(1).isAfter(date)
                ? -1
                : permit.notifiedOn()
                        .get()
                        .plusDays(1)
                        .datesUntil(date)
                        .filter(day -> day.getDayOfWeek().getValue() <= 5)
                        .count();
        return clear >= permit.notifyWorkingDays().getAsInt();
    }
}
