package org.wadeplan.planner.method;

import java.math.BigDecimal;
import java.util.Locale;

/** Walks along the characters of one cell; knows numbers, strings and names, and where it is. */
final class CellScanner {

    /** More digits than any measurement has: keeps arithmetic on hostile files short. */
    private static final int LONGEST_NUMBER = 40;

    private final String text;
    private int at;

    CellScanner(String text) {
        this.text = text;
    }

    /** Position of the next character that is no space, from 1. */
    int position() {
        skipSpace();
        return at + 1;
    }

    boolean atEnd() {
        skipSpace();
        return at >= text.length();
    }

    /** The next character that is no space; a zero character at the end. */
    char peek() {
        return atEnd() ? '\0' : text.charAt(at);
    }

    boolean eat(String token) {
        skipSpace();
        if (!text.startsWith(token, at)) {
            return false;
        }
        at += token.length();
        return true;
    }

    /** The characters from a position up to here. */
    String since(int position) {
        return text.substring(position - 1, at);
    }

    /** Whether the comma just eaten has a digit on both sides with no space: it may be a decimal comma. */
    boolean commaLooksDecimal() {
        return at >= 2 && at < text.length() && isDigit(text.charAt(at - 2)) && isDigit(text.charAt(at));
    }

    /** A name at this place without eating it; blank where none stands here. */
    String peekName() {
        skipSpace();
        int end = at;
        while (end < text.length() && (Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_')) {
            end++;
        }
        return Character.isLetter(peek()) || peek() == '_' ? text.substring(at, end) : "";
    }

    /** Whether a name is followed by an opening bracket. */
    boolean isCall(String name) {
        return text.substring(at + name.length()).stripLeading().startsWith("(");
    }

    boolean startsNumber() {
        char next = peek();
        return isDigit(next) || ((next == '-' || next == '.') && at + 1 < text.length() && startsDigits(at + 1));
    }

    BigDecimal number() throws CellRefusal {
        int from = position();
        if (!startsNumber()) {
            throw refusal("cell-number-expected", here(), "a number such as 0.8");
        }
        if (text.charAt(at) == '-') {
            at++;
        }
        digits();
        if (at + 1 < text.length() && text.charAt(at) == '.' && isDigit(text.charAt(at + 1))) {
            at++;
            digits();
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            throw refusal("cell-beyond-unary-test", "a number with an exponent", "the number in full, such as 1500");
        }
        if (since(from).length() > LONGEST_NUMBER) {
            throw refusal(from, "cell-number-too-long", "a number of more than 40 characters", "a shorter number");
        }
        return new BigDecimal(since(from));
    }

    /** A string between quotation marks, its escapes resolved. */
    String string() throws CellRefusal {
        int from = position();
        StringBuilder value = new StringBuilder();
        for (at++; at < text.length() && text.charAt(at) != '"'; at++) {
            value.append(text.charAt(at) == '\\' ? escaped() : text.charAt(at));
        }
        if (at >= text.length()) {
            throw refusal(from, "cell-string-open", "a text that is not closed", "a quotation mark at its end");
        }
        at++;
        return value.toString();
    }

    private char escaped() throws CellRefusal {
        at++;
        char kind = at < text.length() ? text.charAt(at) : '\0';
        return switch (kind) {
            case '"', '\\', '\'' -> kind;
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            default -> throw refusal("cell-escape", "an escape that is not known here", "\\\" \\\\ \\n \\r \\t");
        };
    }

    /** What stands at this place, in words for a message. */
    String here() {
        if (atEnd()) {
            return "the end of the cell";
        }
        String name = peekName();
        if (!name.isEmpty()) {
            return isCall(name) ? "the function " + name + "(...)" : "the name " + name;
        }
        char next = peek();
        return switch (next) {
            case '"' -> "a text in quotation marks";
            case '@' -> "a date or time";
            case '?' -> "an expression with ?";
            case '{' -> "a context";
            case '+', '*', '/' -> "arithmetic with " + next;
            default ->
                Character.isISOControl(next)
                        ? String.format(Locale.ROOT, "character U+%04X", (int) next)
                        : "\"" + next + "\"";
        };
    }

    CellRefusal refusal(String code, String found, String expected) {
        return refusal(position(), code, found, expected);
    }

    CellRefusal refusal(int position, String code, String found, String expected) {
        return new CellRefusal(new CellFault(position, code, found, expected));
    }

    private void digits() {
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
    }

    private boolean startsDigits(int from) {
        return isDigit(text.charAt(from))
                || (text.charAt(from) == '.' && from + 1 < text.length() && isDigit(text.charAt(from + 1)));
    }

    private void skipSpace() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    /** Only the ten digits of the standard's grammar, not those of other scripts. */
    private static boolean isDigit(char character) {
        return character >= '0' && character <= '9';
    }
}
