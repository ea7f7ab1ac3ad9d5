package org.wadeplan.planner.method.space;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.planner.method.CellWords;
import org.wadeplan.planner.method.Interval;
import org.wadeplan.planner.method.NameUnit;
import org.wadeplan.planner.method.NumberSet;
import org.wadeplan.planner.method.SiteInput;
import org.wadeplan.planner.method.TableCell;
import org.wadeplan.planner.method.TableInput;
import org.wadeplan.planner.method.UnaryTest;
import org.wadeplan.planner.method.ValueType;

/**
 * Which values one input may have.
 *
 * @param test what a value must pass to be possible
 * @param declared true where the table says so itself or there is no other way, false where it had to be assumed
 * @param words for people
 */
public record InputDomain(UnaryTest test, boolean declared, String words) {

    /** What the table declares; else what is known of a site's condition of that name; else an assumption. */
    static InputDomain of(TableInput input, List<UnaryTest> cells) {
        Optional<UnaryTest> declared = input.allowed().map(TableCell::test).filter(test -> !test.alwaysHolds());
        if (declared.isPresent()) {
            return new InputDomain(declared.get(), true, words(input, declared.get()));
        }
        UnaryTest assumed = assumed(input, cells);
        boolean certain = input.type() == ValueType.TRUTH;
        return new InputDomain(assumed, certain, words(input, assumed));
    }

    private static String words(TableInput input, UnaryTest test) {
        if (test.alwaysHolds()) {
            return switch (input.type()) {
                case NUMBER -> "any number";
                case TEXT -> "any word";
                case TRUTH -> "yes or no";
            };
        }
        return CellWords.range(input, test);
    }

    private static UnaryTest assumed(TableInput input, List<UnaryTest> cells) {
        Optional<SiteInput> known = SiteInput.named(input.name()).filter(site -> site.type() == input.type());
        if (known.isPresent()) {
            return known.get().possible();
        }
        return switch (input.type()) {
            case TRUTH -> new UnaryTest.Truths(true, true);
            case NUMBER ->
                NameUnit.of(input.name()).filter(NameUnit::neverNegative).isPresent()
                        ? new UnaryTest.Numbers(NumberSet.of(Interval.atLeast(BigDecimal.ZERO)))
                        : new UnaryTest.Anything();
            case TEXT -> words(cells);
        };
    }

    /** The words that the cells name; any other word too where a cell is written as "all but". */
    private static UnaryTest words(List<UnaryTest> cells) {
        TreeSet<String> named = new TreeSet<>();
        boolean others = false;
        for (UnaryTest cell : cells) {
            if (cell instanceof UnaryTest.Texts texts) {
                named.addAll(texts.texts());
                others |= texts.except();
            }
        }
        return others || named.isEmpty() ? new UnaryTest.Anything() : new UnaryTest.Texts(named, false);
    }
}
