package org.wadeplan.geo.terrain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The words of a text, parted by blanks and line ends, one after the other, with the line that each stands on. */
final class WordStream {

    /** No number and no key is longer: longer runs are no text grid. */
    private static final int LONGEST = 64;

    private final InputStream in;
    private final byte[] buffer = new byte[1 << 16];
    private final byte[] word = new byte[LONGEST];
    private int filled;
    private int at;
    private int line = 1;

    WordStream(InputStream in) {
        this.in = in;
    }

    /** The line of the word last given, from 1. */
    int line() {
        return line;
    }

    /** The next word; empty at the end. A word that is too long is given cut off. */
    Optional<String> next() throws IOException {
        int next = read();
        while (next == ' ' || next == '\t' || next == '\r' || next == '\n') {
            line += next == '\n' ? 1 : 0;
            next = read();
        }
        int length = 0;
        while (next > ' ') {
            if (length < LONGEST) {
                word[length++] = (byte) next;
            }
            next = read();
        }
        if (next >= 0) {
            at--;
        }
        boolean stuck = length == 0 && next >= 0;
        return length == 0 && !stuck
                ? Optional.empty()
                : Optional.of(stuck ? control() : new String(word, 0, length, StandardCharsets.ISO_8859_1));
    }

    /** A control character is no blank and no part of a word: it is given alone, so that reading goes on. */
    private String control() throws IOException {
        return String.valueOf((char) read());
    }

    private int read() throws IOException {
        if (at == filled) {
            filled = Math.max(0, in.read(buffer));
            at = 0;
            if (filled == 0) {
                return -1;
            }
        }
        return buffer[at++] & 0xff;
    }
}
