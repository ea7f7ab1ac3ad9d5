package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** What the table does to this round's sites: those it leaves without a method, and those it gives two. */
public final class MethodFindings {

    private static final String SITES = "sites.csv";
    private static final String OVERRIDE = "methodOverrides in round.json, with the reason";
    private static final String GAP = "method-gap";
    private static final String CLASH = "method-clash";
    private static final int MOST_WISHES_NAMED = 3;

    private MethodFindings() {}

    /** One problem for each site that has no method, worst first. */
    public static List<Problem> of(Round round, List<MethodDecision> decisions) {
        return of(round.methodTable(), decisions);
    }

    static List<Problem> of(DecisionTable table, List<MethodDecision> decisions) {
        return decisions.stream()
                .flatMap(decision -> Stream.concat(overridden(decision).stream(), finding(table, decision).stream()))
                .sorted(Problem.WORST_FIRST)
                .toList();
    }

    /** What keeps a plan from being made: sites for which the table has a gap or a contradiction, and no override. */
    public static List<Problem> refusals(Round round, List<MethodDecision> decisions) {
        return of(round, decisions).stream()
                .filter(problem -> problem.code().equals(GAP) || problem.code().equals(CLASH))
                .toList();
    }

    private static Optional<Problem> overridden(MethodDecision decision) {
        return decision.overridden()
                .map(overridden -> Problem.warning(
                        "method-overridden",
                        SourcePlace.part("round.json", "methodOverrides").column(decision.site()),
                        decision.site() + " is surveyed with " + MethodWords.method(decision) + " "
                                + MethodWords.override(overridden),
                        "",
                        "the reason is printed with the method; delete the override once the table covers the site"));
    }

    /** Site values that lie outside what the table says it is meant for. */
    static List<Problem> outsideTable(DecisionTable table, List<Site> sites, List<Consent> consents) {
        List<Problem> problems = new ArrayList<>();
        for (Site site : sites) {
            Map<String, CaseValue> values = MethodChooser.caseOf(site, consents);
            for (TableInput input : table.inputs()) {
                Optional<UnaryTest> allowed = input.allowed().map(TableCell::test);
                Optional<CaseValue> value =
                        Optional.ofNullable(values.get(input.name())).filter(known -> known.type() == input.type());
                if (value.isPresent() && allowed.isPresent() && !allowed.get().holds(value.get())) {
                    problems.add(Problem.warning(
                            "value-outside-table",
                            SourcePlace.part(SITES, site.id()).column(input.name()),
                            CellWords.value(input, values) + ", which " + table.file() + " is not meant for",
                            CellWords.cell(input, allowed.get()),
                            "check the value, or ask who keeps the table"));
                }
            }
        }
        return problems;
    }

    private static Optional<Problem> finding(DecisionTable table, MethodDecision decision) {
        String site = decision.site();
        SourcePlace place = SourcePlace.part(table.file(), "site " + site);
        return decision.outcome()
                .fold(
                        chosen -> Optional.empty(),
                        undecided -> Optional.of(Problem.error(
                                "method-undecided",
                                SourcePlace.part(SITES, site),
                                undecidedWords(undecided),
                                "a method by one rule",
                                "find out: " + names(undecided.missing()))),
                        noRule -> Optional.of(Problem.error(
                                GAP,
                                place,
                                "no rule fits " + site + ": " + nearMisses(table, noRule),
                                "one rule for every site",
                                "ask who keeps the table for a rule that covers it, or decide yourself: " + OVERRIDE)),
                        clash -> Optional.of(Problem.error(
                                CLASH,
                                place,
                                "rules " + join(clash.rules()) + " fit " + site + " and say "
                                        + String.join(", ", clash.methods()),
                                "one rule, by hit policy " + table.hitPolicy().word(),
                                "ask who keeps the table which rule is meant, or decide yourself: " + OVERRIDE)));
    }

    private static String undecidedWords(MethodOutcome.Undecided undecided) {
        List<String> outcomes = new ArrayList<>(undecided.possibleMethods());
        outcomes.addAll(undecided.possibleTroubles());
        return "not known: " + names(undecided.missing()) + "; the table could say " + String.join(", or ", outcomes);
    }

    /** The rules that came furthest before a cell failed. */
    private static String nearMisses(DecisionTable table, MethodOutcome.NoRule noRule) {
        Map<String, Integer> columns = new LinkedHashMap<>();
        table.inputs().forEach(input -> columns.put(CellWords.input(input), columns.size()));
        int furthest = noRule.failures().stream()
                .mapToInt(failure -> columns.getOrDefault(failure.input(), 0))
                .max()
                .orElse(0);
        Map<String, List<Integer>> rulesByWish = new LinkedHashMap<>();
        noRule.failures().stream()
                .filter(failure -> columns.getOrDefault(failure.input(), 0) == furthest)
                .forEach(failure -> rulesByWish
                        .computeIfAbsent(wish(failure), wish -> new ArrayList<>())
                        .add(failure.rule()));
        return rulesByWish.entrySet().stream()
                .limit(MOST_WISHES_NAMED)
                .map(entry -> (entry.getValue().size() == 1 ? "rule " : "rules ")
                        + join(entry.getValue())
                        + (entry.getValue().size() == 1 ? " wants " : " want ")
                        + entry.getKey())
                .collect(Collectors.joining("; "));
    }

    private static String wish(MethodOutcome.FailedCell failure) {
        return failure.input() + " " + failure.cell() + " and it is " + failure.value();
    }

    private static String names(List<String> inputs) {
        return inputs.stream()
                .map(input -> SiteInput.named(input).map(SiteInput::words).orElse(input))
                .collect(Collectors.joining(", "));
    }

    private static String join(List<Integer> rules) {
        String last = String.valueOf(rules.get(rules.size() - 1));
        String others =
                rules.subList(0, rules.size() - 1).stream().map(String::valueOf).collect(Collectors.joining(", "));
        return others.isEmpty() ? last : others + " and " + last;
    }
}
