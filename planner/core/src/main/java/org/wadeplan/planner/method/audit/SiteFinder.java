package org.wadeplan.planner.method.audit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.CellWords;
import org.wadeplan.planner.method.Interval;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.UnaryTest;
import org.wadeplan.planner.method.ValueType;
import org.wadeplan.planner.method.space.Box;

/** Which sites of the round a region holds, may hold, or comes near to. */
final class SiteFinder {

    private static final Comparator<SiteHit> SUREST_FIRST =
            Comparator.comparing(SiteHit::how).thenComparing(SiteHit::site);

    private final AuditedTable audited;
    private final List<SiteCase> sites;

    SiteFinder(AuditedTable audited, List<SiteCase> sites) {
        this.audited = audited;
        this.sites = sites;
    }

    /**
     * @param regions a site in any of them counts
     * @param causes the columns that make the finding; a site is near where these alone come near
     */
    List<SiteHit> of(List<Box> regions, List<Integer> causes) {
        List<SiteHit> hits = new ArrayList<>();
        for (SiteCase site : sites) {
            regions.stream()
                    .flatMap(region -> hit(site, region, causes).stream())
                    .min(SUREST_FIRST)
                    .ifPresent(hits::add);
        }
        return hits.stream().sorted(SUREST_FIRST).toList();
    }

    private Optional<SiteHit> hit(SiteCase site, Box region, List<Integer> causes) {
        List<Integer> asked = asked(region);
        List<Integer> outside = asked.stream()
                .filter(column -> audited.space()
                        .holds(region, column, site.values())
                        .filter(holds -> !holds)
                        .isPresent())
                .toList();
        List<Integer> unknown = asked.stream()
                .filter(column ->
                        audited.space().holds(region, column, site.values()).isEmpty())
                .toList();
        if (outside.isEmpty() && unknown.isEmpty()) {
            return Optional.of(
                    new SiteHit(site.site(), SiteHit.How.HIT, readings(site, causes.isEmpty() ? asked : causes)));
        }
        if (outside.isEmpty()) {
            return Optional.of(new SiteHit(site.site(), SiteHit.How.POSSIBLE, "not known: " + names(unknown)));
        }
        return near(site, region, causes.isEmpty() ? asked : causes, outside);
    }

    private List<Integer> asked(Box region) {
        return IntStream.range(0, audited.width())
                .filter(column -> !audited.space().isFree(region, column))
                .boxed()
                .toList();
    }

    /** Where every column that makes the finding holds the site or lies within one standard uncertainty of it. */
    private Optional<SiteHit> near(SiteCase site, Box region, List<Integer> causes, List<Integer> outside) {
        List<Integer> close = causes.stream().filter(outside::contains).toList();
        boolean within = !close.isEmpty() && close.stream().allMatch(column -> isClose(site, region, column));
        if (!within) {
            return Optional.empty();
        }
        List<Integer> keptOut =
                outside.stream().filter(column -> !close.contains(column)).toList();
        String words = readings(site, close) + ", within one standard uncertainty";
        return Optional.of(new SiteHit(
                site.site(),
                SiteHit.How.NEAR,
                keptOut.isEmpty() ? words : words + "; kept out so far by " + readings(site, keptOut)));
    }

    private boolean isClose(SiteCase site, Box region, int column) {
        TableInput input = audited.input(column);
        Optional<Double> uncertainty = Optional.ofNullable(site.uncertainties().get(input.name()));
        return uncertainty.isPresent()
                && site.values().get(input.name()) instanceof CaseValue.Quantity number
                && audited.space().test(region, column) instanceof UnaryTest.Numbers numbers
                && numbers.set().intervals().stream()
                        .anyMatch(interval -> distance(interval, number.value()) <= uncertainty.get());
    }

    private static double distance(Interval interval, BigDecimal value) {
        double below =
                interval.low().map(low -> low.subtract(value).doubleValue()).orElse(0.0);
        double above =
                interval.high().map(high -> value.subtract(high).doubleValue()).orElse(0.0);
        return Math.max(0, Math.max(below, above));
    }

    private String readings(SiteCase site, List<Integer> columns) {
        return String.join(
                ", ",
                columns.stream()
                        .filter(column -> audited.input(column).type() != ValueType.TEXT || columns.size() == 1)
                        .map(column -> reading(site, audited.input(column)))
                        .toList());
    }

    private static String reading(SiteCase site, TableInput input) {
        Map<String, CaseValue> values = site.values();
        String uncertainty = Optional.ofNullable(site.uncertainties().get(input.name()))
                .map(value -> " ± " + CaseValue.plain(BigDecimal.valueOf(value)))
                .orElse("");
        return CellWords.input(input) + " " + CellWords.value(input, values, uncertainty);
    }

    private String names(List<Integer> columns) {
        return String.join(
                ", ",
                columns.stream()
                        .map(column -> CellWords.input(audited.input(column)))
                        .toList());
    }
}
