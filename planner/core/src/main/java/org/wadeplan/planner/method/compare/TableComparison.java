package org.wadeplan.planner.method.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.CellWords;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.space.Box;
import org.wadeplan.planner.method.space.Differences;
import org.wadeplan.planner.method.space.TableSpace;

/**
 * Two tables held against each other.
 *
 * @param sites that come out otherwise, in the order of the site list
 * @param regions in which the tables differ
 * @param cells that differ between rules with the same id, and rules that only one of the tables has
 * @param complete false where there are more regions
 */
public record TableComparison(
        List<SiteChange> sites, List<RegionChange> regions, List<String> cells, boolean complete) {

    public static TableComparison of(DecisionTable before, DecisionTable after, List<SiteCase> sites) {
        TableSpace space = TableSpace.of(List.of(before, after));
        Differences.Found found = Differences.of(space, before, after);
        List<RegionChange> regions = found.differences().stream()
                .map(one -> new RegionChange(words(space, one.box()), one.before(), one.after()))
                .toList();
        List<SiteChange> changes = sites.stream()
                .flatMap(site -> change(before, after, site).stream())
                .toList();
        return new TableComparison(changes, regions, CellChanges.of(before, after), found.complete());
    }

    private static List<String> words(TableSpace space, Box box) {
        return IntStream.range(0, space.columns().size())
                .filter(column -> !space.isFree(box, column))
                .mapToObj(column -> {
                    TableInput input = space.columns().get(column).input();
                    return CellWords.input(input) + " " + CellWords.cell(input, space.test(box, column));
                })
                .toList();
    }

    private static Optional<SiteChange> change(DecisionTable before, DecisionTable after, SiteCase site) {
        MethodDecision was = MethodChooser.decide(before, site.site(), known(before, site));
        MethodDecision is = MethodChooser.decide(after, site.site(), known(after, site));
        boolean bothChosen = was.chosen().isPresent() && is.chosen().isPresent();
        boolean same = bothChosen
                ? MethodWords.method(was).equals(MethodWords.method(is))
                : MethodWords.outcome(was).equals(MethodWords.outcome(is));
        if (same) {
            return Optional.empty();
        }
        List<String> reasons = new ArrayList<>();
        failed(after, before, was, site).forEach(words -> reasons.add("now " + words));
        failed(before, after, is, site).forEach(words -> reasons.add("before " + words));
        return Optional.of(
                new SiteChange(site.site(), MethodWords.outcome(was), MethodWords.outcome(is), List.copyOf(reasons)));
    }

    /** Values of inputs that the table has, of its types. */
    private static Map<String, CaseValue> known(DecisionTable table, SiteCase site) {
        return MethodChooser.readable(table, site.values());
    }

    /** Why the rule that answers in one table does not in the other, where both have it. */
    private static List<String> failed(DecisionTable other, DecisionTable own, MethodDecision decision, SiteCase site) {
        List<String> words = new ArrayList<>();
        decision.chosen().flatMap(chosen -> own.rule(chosen.rule())).ifPresent(rule -> {
            Optional<TableRule> twin = other.rules().stream()
                    .filter(one -> one.id().equals(rule.id()))
                    .findFirst();
            if (twin.isEmpty()) {
                words.add("there is no rule " + rule.id());
                return;
            }
            for (int column = 0; column < other.inputs().size(); column++) {
                TableInput input = other.inputs().get(column);
                Optional<CaseValue> value = Optional.ofNullable(site.values().get(input.name()));
                if (value.isPresent() && !twin.get().cells().get(column).test().holds(value.get())) {
                    words.add("rule " + twin.get().number() + " fails at " + CellWords.input(input) + " "
                            + CellWords.value(input, site.values()) + ", not in "
                            + CellWords.cell(
                                    input, twin.get().cells().get(column).test()));
                }
            }
        });
        return words;
    }
}
