package org.wadeplan.planner.decon.trace;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.Touch;
import org.wadeplan.planner.decon.ledger.Treated;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;

/**
 * Whether something was treated against a pest after a touch, by evidence of any grade but X, on every material and in every
 * life stage that the round's table tells apart.
 */
final class Support {

    private Support() {}

    static boolean treated(Round round, Lane lane, Touch touch, String pest, Instant by) {
        List<Turnaround.Cover> covers = lane.treated().stream()
                .filter(treated -> !treated.start().isBefore(touch.until()))
                .flatMap(treated -> treated.credits().stream())
                .filter(credit -> !credit.from().isAfter(by))
                .map(Treated.Credit::cover)
                .filter(cover -> cover.pest().equals(pest))
                .toList();
        List<Optional<String>> stages = stages(round, pest);
        return lane.kit().materials().stream()
                .allMatch(material -> stages.stream().allMatch(stage -> covers.stream()
                        .anyMatch(cover -> cover.material() == material && isAbout(cover, stage))));
    }

    private static boolean isAbout(Turnaround.Cover cover, Optional<String> stage) {
        return cover.stage().isEmpty() || cover.stage().equals(stage);
    }

    private static List<Optional<String>> stages(Round round, String pest) {
        List<Optional<String>> named = round.biosecurity().treatments().stream()
                .filter(row -> row.pest().equals(pest) && row.stage().isPresent())
                .map(Treatment::stage)
                .distinct()
                .toList();
        return named.isEmpty() ? List.of(Optional.empty()) : named;
    }
}
