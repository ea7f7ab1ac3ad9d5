package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grammar: OMG, Decision Model and Notation 1.3, chapter 9 (unary tests), from memory of the grammar rules. */
class UnaryTestParserTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[600..15]       | 1 | [600..15] ends before it starts",
                "1, (5..5]       | 4 | (5..5] holds no number",
                "15..600         | 3 | \".\"",
                "[15..600        | 9 | the end of the cell",
                "[15,600]        | 4 | \",\"",
                "[15 600]        | 5 | \"6\"",
                "> depth         | 3 | the name depth",
                "date(\"2027\")  | 1 | the function date(...)",
                "abs( ? ) > 3    | 1 | the function abs(...)",
                "? > 3           | 1 | an expression with ?",
                "15 + 3          | 4 | arithmetic with +",
                "null            | 1 | the name null",
                "not             | 1 | the name not",
                "not(-)          | 5 | \"-\"",
                "not(5           | 6 | the end of the cell",
                "5,              | 3 | the end of the cell",
                "1e3             | 2 | a number with an exponent",
                "≤0.8            | 1 | \"≤\"",
                "–               | 1 | \"–\"",
                "\"deep\"        | 1 | a text in quotation marks",
                "<=0,8           | 4 | a comma between digits, which parts two tests",
                "٣               | 1 | \"٣\"",
                "@\"2027-01-01\" | 1 | a date or time"
            })
    void refusesByNameAndPositionWhateverGoesBeyondUnaryTestsOverNumbers(String cell, int position, String found) {
        CellFault fault = refused(cell, ValueType.NUMBER);
        assertThat(fault.found()).isEqualTo(found);
        assertThat(fault.position()).isEqualTo(position);
        assertThat(fault.expected()).isNotBlank();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "flowing        | 1 | the name flowing",
                "\"flowing      | 1 | a text that is not closed",
                "> \"a\"        | 1 | \">\"",
                "\"a\" \"b\"    | 5 | a text in quotation marks",
                "“flowing”      | 1 | \"“\"",
                "\"a\\q\"       | 4 | an escape that is not known here"
            })
    void refusesWhatIsNoTextInAColumnOfTexts(String cell, int position, String found) {
        CellFault fault = refused(cell, ValueType.TEXT);
        assertThat(fault.found()).isEqualTo(found);
        assertThat(fault.position()).isEqualTo(position);
    }

    @Test
    void readsTextsAndTheirNegation() {
        TreeSet<String> two = new TreeSet<>(List.of("pools", "say \"dry\""));
        assertThat(read("\"pools\", \"say \\\"dry\\\"\"", ValueType.TEXT)).isEqualTo(new UnaryTest.Texts(two, false));
        assertThat(read("not(\"pools\",\"say \\\"dry\\\"\")", ValueType.TEXT))
                .isEqualTo(new UnaryTest.Texts(two, true));
        assertThat(read("\"-\"", ValueType.TEXT)).isEqualTo(new UnaryTest.Texts(new TreeSet<>(List.of("-")), false));
    }

    @Test
    void readsTruthsAndTheirNegation() {
        assertThat(read("true", ValueType.TRUTH)).isEqualTo(new UnaryTest.Truths(true, false));
        assertThat(read(" not( true ) ", ValueType.TRUTH)).isEqualTo(new UnaryTest.Truths(false, true));
        assertThat(read("true,false", ValueType.TRUTH).alwaysHolds()).isTrue();
        assertThat(refused("yes", ValueType.TRUTH).found()).isEqualTo("the name yes");
    }

    @Test
    void joinsIntervalsThatTouchAndKeepsApartThoseThatDoNot() {
        assertThat(set("[1..2), [2..3]")).isEqualTo(set("[1..3]"));
        assertThat(set("[1..2), (2..3]").intervals()).hasSize(2);
        assertThat(set("<2, >=2").isEverything()).isTrue();
        assertThat(set("-0.50")).isEqualTo(set("-.5"));
        assertThat(set("not(<2, >=2)").isEmpty()).isTrue();
        assertThat(set("not([1..2), 3)")).isEqualTo(set("<1, [2..3), >3"));
    }

    @Test
    void doubtsACommaBetweenDigitsWithoutASpace() {
        ParsedCell close = UnaryTestParser.parse("1,5", ValueType.NUMBER);
        assertThat(close).isInstanceOfSatisfying(ParsedCell.Read.class, read -> assertThat(read.doubts())
                .extracting(CellFault::position)
                .containsExactly(2));
        ParsedCell apart = UnaryTestParser.parse("1, 5", ValueType.NUMBER);
        assertThat(apart).isInstanceOfSatisfying(ParsedCell.Read.class, read -> assertThat(read.doubts())
                .isEmpty());
    }

    @Test
    void readsTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(set("[0.5..1234.5]"))
                        .isEqualTo(NumberSet.of(new Interval(
                                java.util.Optional.of(new BigDecimal("0.5")),
                                true,
                                java.util.Optional.of(new BigDecimal("1234.5")),
                                true)));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private static NumberSet set(String cell) {
        return ((UnaryTest.Numbers) read(cell, ValueType.NUMBER)).set();
    }

    private static UnaryTest read(String cell, ValueType type) {
        return UnaryTestParser.parse(cell, type).fold((test, doubts) -> test, fault -> {
            throw new AssertionError(fault);
        });
    }

    private static CellFault refused(String cell, ValueType type) {
        return UnaryTestParser.parse(cell, type)
                .fold(
                        (test, doubts) -> {
                            throw new AssertionError(test);
                        },
                        fault -> fault);
    }
}
