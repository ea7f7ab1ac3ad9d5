package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Reads one input cell: the unary tests of DMN (OMG, Decision Model and Notation 1.3, chapter 9, grammar rules 7 to 15)
 * over numbers, strings and booleans. Whatever goes beyond them is refused by name, never ignored.
 */
public final class UnaryTestParser {

    private static final String BEYOND = "cell-beyond-unary-test";

    private final CellScanner scan;
    private final ValueType type;
    private final List<CellFault> doubts = new ArrayList<>();

    private UnaryTestParser(String text, ValueType type) {
        this.scan = new CellScanner(text);
        this.type = type;
    }

    /**
     * Reads a cell. An empty one counts as {@code -}, as modellers write it.
     *
     * @param type what the column holds
     */
    public static ParsedCell parse(String text, ValueType type) {
        UnaryTestParser parser = new UnaryTestParser(text, type);
        try {
            return new ParsedCell.Read(parser.whole(), List.copyOf(parser.doubts));
        } catch (CellRefusal refusal) {
            return new ParsedCell.Refused(refusal.fault());
        }
    }

    private UnaryTest whole() throws CellRefusal {
        if (scan.atEnd()) {
            return new UnaryTest.Anything();
        }
        if (!scan.startsNumber() && scan.eat("-")) {
            requireEnd();
            return new UnaryTest.Anything();
        }
        boolean negated = scan.peekName().equals("not") && scan.isCall("not");
        if (!negated) {
            UnaryTest test = list();
            requireEnd();
            return test;
        }
        scan.eat("not");
        scan.eat("(");
        UnaryTest inner = list();
        require(")");
        requireEnd();
        return not(inner);
    }

    private UnaryTest list() throws CellRefusal {
        boolean comparison = startsComparison();
        UnaryTest all = item();
        int comma = scan.position();
        while (scan.eat(",")) {
            if (scan.commaLooksDecimal()) {
                doubtComma(comma, comparison);
            }
            comparison = startsComparison();
            all = either(all, item());
            comma = scan.position();
        }
        return all;
    }

    /** By the standard {@code <=0,8} means "at most 0, or 8": nobody who writes it means that. */
    private void doubtComma(int position, boolean comparison) throws CellRefusal {
        if (comparison) {
            throw scan.refusal(
                    position,
                    "cell-decimal-comma",
                    "a comma between digits, which parts two tests",
                    "a decimal point (0.8), or a space after a comma that parts two tests");
        }
        doubts.add(new CellFault(
                position,
                "cell-decimal-comma",
                "a comma between digits, read as two numbers",
                "a decimal point (0.8), or a space after a comma that parts two tests"));
    }

    private boolean startsComparison() {
        return "<>=!".indexOf(scan.peek()) >= 0;
    }

    private UnaryTest item() throws CellRefusal {
        return switch (type) {
            case NUMBER -> new UnaryTest.Numbers(numbers());
            case TEXT -> text();
            case TRUTH -> truth();
        };
    }

    private NumberSet numbers() throws CellRefusal {
        if ("[](".indexOf(scan.peek()) >= 0) {
            return NumberSet.of(interval());
        }
        if (scan.eat("<=")) {
            return NumberSet.of(Interval.atMost(scan.number()));
        }
        if (scan.eat(">=")) {
            return NumberSet.of(Interval.atLeast(scan.number()));
        }
        if (scan.eat("<")) {
            return NumberSet.of(Interval.below(scan.number()));
        }
        if (scan.eat(">")) {
            return NumberSet.of(Interval.above(scan.number()));
        }
        if (scan.eat("!=")) {
            return NumberSet.of(Interval.exactly(scan.number())).complement();
        }
        if (scan.eat("=") || scan.startsNumber()) {
            return NumberSet.of(Interval.exactly(scan.number()));
        }
        throw scan.refusal(
                BEYOND, scan.here(), "-, a number, <, <=, >, >=, an interval such as [15..600], or not(...)");
    }

    private Interval interval() throws CellRefusal {
        int from = scan.position();
        boolean lowIncluded = scan.eat("[");
        if (!lowIncluded && !scan.eat("(")) {
            scan.eat("]");
        }
        BigDecimal low = scan.number();
        require("..");
        BigDecimal high = scan.number();
        boolean highIncluded = scan.eat("]");
        if (!highIncluded && !scan.eat(")") && !scan.eat("[")) {
            throw scan.refusal("cell-interval-open", scan.here(), "], ) or [ at the end of an interval");
        }
        return between(from, Optional.of(low), lowIncluded, Optional.of(high), highIncluded);
    }

    private Interval between(
            int from, Optional<BigDecimal> low, boolean lowIncluded, Optional<BigDecimal> high, boolean highIncluded)
            throws CellRefusal {
        if (Interval.isEmpty(low, lowIncluded, high, highIncluded)) {
            boolean equal = low.get().compareTo(high.get()) == 0;
            String why = equal ? " holds no number" : " ends before it starts";
            throw scan.refusal(
                    from, "cell-interval-empty", scan.since(from) + why, "the smaller number first, such as [15..600]");
        }
        return new Interval(low, lowIncluded, high, highIncluded);
    }

    private UnaryTest text() throws CellRefusal {
        if (scan.peek() != '"') {
            throw scan.refusal(BEYOND, scan.here(), "-, texts in quotation marks, or not(...)");
        }
        TreeSet<String> one = new TreeSet<>();
        one.add(scan.string());
        return new UnaryTest.Texts(one, false);
    }

    private UnaryTest truth() throws CellRefusal {
        String name = scan.peekName();
        if (!name.equals("true") && !name.equals("false")) {
            throw scan.refusal(BEYOND, scan.here(), "-, true, false, or not(...)");
        }
        scan.eat(name);
        return new UnaryTest.Truths(name.equals("true"), name.equals("false"));
    }

    private void require(String token) throws CellRefusal {
        if (!scan.eat(token)) {
            throw scan.refusal("cell-unfinished", scan.here(), token);
        }
    }

    private void requireEnd() throws CellRefusal {
        if (!scan.atEnd()) {
            throw scan.refusal(BEYOND, scan.here(), "a comma and another test, or the end of the cell");
        }
    }

    private static UnaryTest not(UnaryTest test) {
        return test.fold(
                () -> test,
                set -> new UnaryTest.Numbers(set.complement()),
                (texts, except) -> new UnaryTest.Texts(texts, !except),
                truths -> new UnaryTest.Truths(!truths.trueAllowed(), !truths.falseAllowed()));
    }

    private static UnaryTest either(UnaryTest a, UnaryTest b) {
        if (a instanceof UnaryTest.Numbers left && b instanceof UnaryTest.Numbers right) {
            return new UnaryTest.Numbers(left.set().union(right.set()));
        }
        if (a instanceof UnaryTest.Texts left && b instanceof UnaryTest.Texts right) {
            TreeSet<String> both = new TreeSet<>(left.texts());
            both.addAll(right.texts());
            return new UnaryTest.Texts(both, false);
        }
        if (a instanceof UnaryTest.Truths left && b instanceof UnaryTest.Truths right) {
            return new UnaryTest.Truths(
                    left.trueAllowed() || right.trueAllowed(), left.falseAllowed() || right.falseAllowed());
        }
        throw new IllegalStateException("A column mixes types: " + a + ", " + b);
    }
}
