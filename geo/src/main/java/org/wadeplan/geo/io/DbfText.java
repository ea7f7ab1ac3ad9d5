package org.wadeplan.geo.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the texts of a .dbf are stored: by the name in the {@code .cpg} beside it, else by the language byte of its header,
 * else as UTF-8 where that fits and as Windows-1252 where it does not.
 *
 * <p>Source of the language bytes: dBASE and FoxPro code page marks as published for FoxPro 9 (table "Code Pages
 * Supported by Visual FoxPro") and used by Esri; names in {@code .cpg}: common practice.
 */
final class DbfText {

    private static final Charset LATIN = Charset.forName("windows-1252");
    private static final int LONGEST_NAME = 64;
    private static final Pattern NUMBER = Pattern.compile("(\\d{3,5})");

    private static final Map<Integer, String> BY_LANGUAGE = Map.ofEntries(
            Map.entry(0x01, "IBM437"),
            Map.entry(0x02, "IBM850"),
            Map.entry(0x03, "windows-1252"),
            Map.entry(0x57, "windows-1252"),
            Map.entry(0x58, "windows-1252"),
            Map.entry(0x59, "windows-1252"),
            Map.entry(0x64, "IBM852"),
            Map.entry(0x65, "IBM866"),
            Map.entry(0x66, "IBM865"),
            Map.entry(0x67, "IBM861"),
            Map.entry(0x6A, "x-IBM737"),
            Map.entry(0x6B, "IBM857"),
            Map.entry(0x78, "x-windows-950"),
            Map.entry(0x79, "x-windows-949"),
            Map.entry(0x7A, "GBK"),
            Map.entry(0x7B, "windows-31j"),
            Map.entry(0x7C, "x-windows-874"),
            Map.entry(0xC8, "windows-1250"),
            Map.entry(0xC9, "windows-1251"),
            Map.entry(0xCA, "windows-1254"),
            Map.entry(0xCB, "windows-1253"),
            Map.entry(0xCC, "windows-1257"));

    private final Optional<Charset> stated;
    private boolean assumed;
    private int undecodable;

    private DbfText(Optional<Charset> stated) {
        this.stated = stated;
    }

    /**
     * @param cpg the name that stands in the .cpg; empty where there is no such file
     * @param language byte 29 of the header
     */
    static DbfText of(Optional<String> cpg, int language) {
        Optional<Charset> named = cpg.flatMap(DbfText::charset);
        return new DbfText(named.or(() -> Optional.ofNullable(BY_LANGUAGE.get(language))
                .filter(Charset::isSupported)
                .map(Charset::forName)));
    }

    /** The content of a .cpg; blank where it cannot be read. */
    static String nameIn(Path cpg) {
        try (InputStream in = Files.newInputStream(cpg)) {
            return new String(in.readNBytes(LONGEST_NAME), StandardCharsets.ISO_8859_1)
                    .replaceAll("[^\\x20-\\x7E]", "")
                    .strip();
        } catch (IOException closed) {
            return "";
        }
    }

    static Optional<Charset> charset(String name) {
        Matcher number = NUMBER.matcher(name);
        if (!number.find()) {
            return known(name);
        }
        String digits = number.group(1);
        return switch (digits) {
            case "65001" -> Optional.of(StandardCharsets.UTF_8);
            case "8859", "88591" -> known(name).or(() -> Optional.of(StandardCharsets.ISO_8859_1));
            default -> known(name).or(() -> known("windows-" + digits)).or(() -> known("IBM" + digits));
        };
    }

    private static Optional<Charset> known(String name) {
        try {
            return Optional.of(Charset.forName(name));
        } catch (IllegalArgumentException unknown) {
            return Optional.empty();
        }
    }

    /** The text in these bytes, without the spaces and zero bytes that fill the column. */
    String decoded(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && (bytes[end - 1] == ' ' || bytes[end - 1] == 0)) {
            end--;
        }
        ByteBuffer text = ByteBuffer.wrap(bytes, 0, end);
        if (stated.isPresent()) {
            return replacing(text, stated.get());
        }
        assumed |= !isAscii(bytes, end);
        return strict(text, StandardCharsets.UTF_8).orElseGet(() -> replacing(text.rewind(), LATIN));
    }

    private static boolean isAscii(byte[] bytes, int end) {
        for (int i = 0; i < end; i++) {
            if (bytes[i] < 0) {
                return false;
            }
        }
        return true;
    }

    private static Optional<String> strict(ByteBuffer text, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(text)
                    .toString()
                    .strip());
        } catch (CharacterCodingException other) {
            return Optional.empty();
        }
    }

    private String replacing(ByteBuffer text, Charset charset) {
        CharBuffer decoded = charset.decode(text);
        String words = decoded.toString().strip();
        if (words.indexOf('\uFFFD') >= 0) {
            undecodable++;
        }
        return words;
    }

    /** Whether a text with letters beyond ASCII was read without anything saying how it is stored. */
    boolean assumed() {
        return assumed;
    }

    /** How many texts held bytes that stand for no letter. */
    int undecodable() {
        return undecodable;
    }

    String charsetName() {
        return stated.map(Charset::name).orElse("UTF-8 or windows-1252");
    }
}
