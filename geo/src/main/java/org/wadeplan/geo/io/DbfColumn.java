package org.wadeplan.geo.io;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * One column of a .dbf. Source: dBASE III file format, table record layout: C text, N and F numbers as text, L a letter,
 * D eight digits.
 *
 * @param name in the file's spelling
 * @param type its letter
 * @param start where it begins in a row, counted from the row's mark
 * @param width in bytes
 * @param decimals digits after the point
 */
record DbfColumn(String name, char type, int start, int width, int decimals) {

    private static final int WIDEST_WHOLE = 18;

    /** A cell holds something that its column does not allow. */
    static final class Unreadable extends Exception {
        Unreadable(String text) {
            super(text, null, false, false);
        }
    }

    boolean isKnown() {
        return "CNFLD".indexOf(type) >= 0;
    }

    Field field() {
        return switch (type) {
            case 'N', 'F' ->
                decimals == 0 && width <= WIDEST_WHOLE && type == 'N' ? Field.whole(name) : Field.decimal(name);
            case 'L' -> Field.flag(name);
            default -> Field.text(name);
        };
    }

    /** Empty where the cell is blank: blank means not known. */
    Optional<Attribute> value(byte[] cell, DbfText texts) throws Unreadable {
        if (type == 'C') {
            String text = texts.decoded(cell);
            return text.isEmpty() ? Optional.empty() : Optional.of(Attribute.of(text));
        }
        String text =
                new String(cell, StandardCharsets.ISO_8859_1).replace('\0', ' ').strip();
        if (text.isEmpty() || text.chars().allMatch(letter -> letter == '*' || letter == '?')) {
            return Optional.empty();
        }
        return switch (type) {
            case 'L' -> Optional.of(flag(text));
            case 'D' -> date(text);
            default -> Optional.of(number(text));
        };
    }

    private static Attribute flag(String text) throws Unreadable {
        return switch (text.toUpperCase(Locale.ROOT)) {
            case "T", "Y" -> Attribute.of(true);
            case "F", "N" -> Attribute.of(false);
            default -> throw new Unreadable(text);
        };
    }

    private static Optional<Attribute> date(String text) throws Unreadable {
        if (text.equals("00000000")) {
            return Optional.empty();
        }
        if (!text.matches("\\d{8}")) {
            throw new Unreadable(text);
        }
        try {
            LocalDate day = LocalDate.of(
                    Integer.parseInt(text.substring(0, 4)),
                    Integer.parseInt(text.substring(4, 6)),
                    Integer.parseInt(text.substring(6)));
            return Optional.of(Attribute.of(day.toString()));
        } catch (DateTimeException noSuchDay) {
            throw new Unreadable(text);
        }
    }

    private Attribute number(String text) throws Unreadable {
        try {
            if (field().type() == Field.Type.WHOLE && text.matches("[+-]?\\d+")) {
                return Attribute.of(Long.parseLong(text));
            }
            double number = Double.parseDouble(text);
            if (Double.isFinite(number) && !text.endsWith("d") && !text.endsWith("f")) {
                return Attribute.of(number);
            }
        } catch (NumberFormatException word) {
            // The same answer as for a number that is none.
        }
        throw new Unreadable(text);
    }
}
