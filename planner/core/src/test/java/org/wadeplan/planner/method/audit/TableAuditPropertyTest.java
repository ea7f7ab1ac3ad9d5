package org.wadeplan.planner.method.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.HitPolicy;
import org.wadeplan.planner.method.TableAnswer;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.TableRule;
import org.wadeplan.planner.method.UnaryTest;

/** Small random tables: every finding is confirmed, and none is missed, by looking at every case of a grid. */
class TableAuditPropertyTest {

    private static final List<Map<String, CaseValue>> GRID = SmallTable.grid();

    @Property(tries = 200)
    void aCaseLiesInAGapIfAndOnlyIfNoRuleMatchesIt(@ForAll("tables") DecisionTable table) {
        List<AuditFinding> gaps = TableAudit.audit(table).findings().stream()
                .filter(TableAuditPropertyTest::isGap)
                .toList();
        for (Map<String, CaseValue> one : GRID) {
            boolean inGap = gaps.stream().anyMatch(gap -> holds(gap, one));
            assertThat(inGap).as("%s", one).isEqualTo(matching(table, one).isEmpty());
        }
        gaps.forEach(gap -> assertThat(matching(table, example(gap))).isEmpty());
    }

    @Property(tries = 200)
    void everyTwoRulesThatMeetAreReportedAndNoOthers(@ForAll("tables") DecisionTable table) {
        List<AuditFinding> findings = TableAudit.audit(table).findings();
        Set<String> contradicting = new TreeSet<>();
        Set<String> agreeing = new TreeSet<>();
        for (Map<String, CaseValue> one : GRID) {
            pairs(matching(table, one)).forEach((pair, same) -> (same ? agreeing : contradicting).add(pair));
        }
        Set<Integer> redundant = rules(findings, FindingKind.REDUNDANT);
        agreeing.removeIf(pair ->
                redundant.stream().anyMatch(rule -> List.of(pair.split("-")).contains("" + rule)));
        assertThat(reported(findings, FindingKind.CONTRADICTION, FindingKind.CONTRADICTION_AT_LIMIT))
                .isEqualTo(contradicting);
        assertThat(reported(findings, FindingKind.OVERLAP, FindingKind.OVERLAP_AT_LIMIT))
                .isEqualTo(agreeing);
    }

    @Property(tries = 200)
    void theExampleOfAMeetingIsMatchedByBothSides(@ForAll("tables") DecisionTable table) {
        for (AuditFinding finding : TableAudit.audit(table).findings()) {
            if (!isGap(finding) && finding.kind() != FindingKind.UNREACHABLE) {
                List<Integer> matching = matching(table, example(finding)).stream()
                        .map(TableRule::number)
                        .toList();
                assertThat(matching).as("%s", finding).containsAnyElementsOf(finding.rules());
                assertThat(matching).as("%s", finding).containsAnyElementsOf(finding.others());
                assertThat(holds(finding, example(finding))).isTrue();
            }
        }
    }

    @Property(tries = 200)
    void rulesCalledNeedlessChangeNothingAndAllOthersChangeSomething(@ForAll("tables") DecisionTable table) {
        List<AuditFinding> findings = TableAudit.audit(table).findings();
        Set<Integer> needless = rules(findings, FindingKind.REDUNDANT);
        Set<Integer> never = rules(findings, FindingKind.UNREACHABLE);
        DecisionTable kept = without(table, needless);
        for (Map<String, CaseValue> one : GRID) {
            assertThat(answer(kept, one)).as("%s", one).isEqualTo(answer(table, one));
        }
        DecisionTable shorter = without(kept, never);
        for (Map<String, CaseValue> one : GRID) {
            assertThat(answer(shorter, one)).as("%s", one).isEqualTo(answer(table, one));
        }
        for (TableRule rule : shorter.rules()) {
            // With those that never answer gone or still there: one of the two must need this rule.
            assertThat(needs(shorter, rule) || needs(kept, rule))
                    .as("rule %d of %s", rule.number(), shorter.rules())
                    .isTrue();
        }
    }

    private static boolean needs(DecisionTable table, TableRule rule) {
        DecisionTable less = without(table, Set.of(rule.number()));
        return GRID.stream().anyMatch(one -> !answer(less, one).equals(answer(table, one)));
    }

    private static boolean isGap(AuditFinding finding) {
        return finding.kind() == FindingKind.GAP || finding.kind() == FindingKind.GAP_AT_LIMIT;
    }

    /** What a table says of a case: of rules that may not match together, everything that they say. */
    private static Object answer(DecisionTable table, Map<String, CaseValue> one) {
        List<TableRule> matching = matching(table, one);
        return table.hitPolicy().ranks()
                ? TableAnswer.of(table, matching).rules().stream()
                        .map(TableRule::outputs)
                        .toList()
                : matching.stream().map(TableRule::outputs).collect(Collectors.toSet());
    }

    private static DecisionTable without(DecisionTable table, Set<Integer> numbers) {
        List<TableRule> rules = table.rules().stream()
                .filter(rule -> !numbers.contains(rule.number()))
                .toList();
        return new DecisionTable("", "", "", table.hitPolicy(), table.inputs(), table.outputs(), rules, "");
    }

    private static List<TableRule> matching(DecisionTable table, Map<String, CaseValue> one) {
        return table.rules().stream()
                .filter(rule -> SmallTable.matches(rule, one))
                .toList();
    }

    private static Map<String, Boolean> pairs(List<TableRule> matching) {
        Map<String, Boolean> pairs = new LinkedHashMap<>();
        for (TableRule a : matching) {
            for (TableRule b : matching) {
                if (a.number() < b.number()) {
                    pairs.put(a.number() + "-" + b.number(), a.outputs().equals(b.outputs()));
                }
            }
        }
        return pairs;
    }

    private static Set<String> reported(List<AuditFinding> findings, FindingKind... kinds) {
        Set<String> pairs = new TreeSet<>();
        for (AuditFinding finding : findings) {
            if (List.of(kinds).contains(finding.kind())) {
                for (int a : finding.rules()) {
                    finding.others()
                            .forEach(b -> assertThat(pairs.add(a + "-" + b)).isTrue());
                }
            }
        }
        return pairs;
    }

    private static Set<Integer> rules(List<AuditFinding> findings, FindingKind kind) {
        return findings.stream()
                .filter(finding -> finding.kind() == kind)
                .flatMap(finding -> finding.rules().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean holds(AuditFinding finding, Map<String, CaseValue> one) {
        return finding.region().stream()
                .allMatch(part -> test(part.input(), part.cell()).holds(Objects.requireNonNull(one.get(part.input()))));
    }

    private static UnaryTest test(String input, String cell) {
        TableInput column = SmallTable.INPUTS.stream()
                .filter(known -> known.name().equals(input))
                .findFirst()
                .orElseThrow();
        return SmallTable.cell(cell, column.type()).test();
    }

    private static Map<String, CaseValue> example(AuditFinding finding) {
        Map<String, CaseValue> values = new LinkedHashMap<>();
        finding.example().forEach((name, cell) -> values.put(name, CaseValues.of(cell)));
        return values;
    }

    @Provide
    Arbitrary<DecisionTable> tables() {
        return RandomTables.tables(Arbitraries.of(HitPolicy.class));
    }
}
