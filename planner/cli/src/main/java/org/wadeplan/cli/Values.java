package org.wadeplan.cli;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Values of options, with refusals that say what is allowed. */
final class Values {

    private Values() {}

    static void register(CommandLine line) {
        line.registerConverter(Instant.class, Values::instant);
        line.registerConverter(LocalDate.class, Values::date);
        line.registerConverter(Long.class, Values::wholeNumber);
    }

    /** The path as it is typed into a shell. */
    static String typed(Path path) {
        return path.toString().contains(" ") ? '"' + path.toString() + '"' : path.toString();
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException(
                    "'" + text + "' is no instant; write one in UTC like 2027-09-05T18:00:00Z");
        }
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException(
                    "'" + text + "' is no day of the calendar; write one as year-month-day like 2027-09-06");
        }
    }

    private static Long wholeNumber(String text) {
        try {
            return Long.valueOf(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is no whole number; write one like 20270906");
        }
    }

    /** A search budget: a whole number from 0. */
    static final class Iterations implements ITypeConverter<Integer> {

        @Override
        public Integer convert(String text) {
            try {
                int budget = Integer.parseInt(text);
                if (budget >= 0) {
                    return budget;
                }
            } catch (NumberFormatException e) {
                // refused below, with the same words as a negative number
            }
            throw new TypeConversionException(
                    "'" + text + "' is no search budget; write a whole number from 0 to " + Integer.MAX_VALUE);
        }
    }

    /** How many: a whole number from 1. */
    static final class Count implements ITypeConverter<Integer> {

        @Override
        public Integer convert(String text) {
            try {
                int count = Integer.parseInt(text);
                if (count >= 1) {
                    return count;
                }
            } catch (NumberFormatException e) {
                // refused below, with the same words as a number below 1
            }
            throw new TypeConversionException("'" + text + "' is no count; write a whole number from 1");
        }
    }
}
