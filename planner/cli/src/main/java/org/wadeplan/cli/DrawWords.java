package org.wadeplan.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.draw.Allocation;
import org.wadeplan.geo.draw.Loss;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The words of a draw on the command line. */
final class DrawWords {

    private DrawWords() {}

    /** {@code denied} or {@code denied:refused by letter}; empty where the ground is none. */
    static Optional<Loss> loss(String words) {
        int colon = words.indexOf(':');
        String ground = (colon < 0 ? words : words.substring(0, colon)).strip().toLowerCase(Locale.ROOT);
        String why = colon < 0 ? "" : words.substring(colon + 1).strip();
        return Arrays.stream(Loss.Ground.values())
                .filter(known -> known.words().equals(ground))
                .findFirst()
                .map(known -> new Loss(known, why.isEmpty() ? "as told" : why));
    }

    static List<String> grounds() {
        return Arrays.stream(Loss.Ground.values()).map(Loss.Ground::words).toList();
    }

    /** {@code proportional}, {@code equal} or {@code 1=10,2=20}. */
    static final class Shares implements ITypeConverter<Allocation> {

        @Override
        public Allocation convert(String text) {
            return switch (text.strip().toLowerCase(Locale.ROOT)) {
                case "proportional" -> new Allocation.Proportional();
                case "equal" -> new Allocation.Equal();
                default -> given(text);
            };
        }

        private static Allocation given(String text) {
            Map<String, Integer> sizes = new LinkedHashMap<>();
            for (String part : text.split(",", -1)) {
                int equals = part.lastIndexOf('=');
                String stratum = equals < 0 ? "" : part.substring(0, equals).strip();
                String number = part.substring(equals + 1).strip();
                if (stratum.isEmpty() || !number.matches("[0-9]{1,6}") || sizes.containsKey(stratum)) {
                    throw new TypeConversionException("'" + text
                            + "' is no allocation; write proportional, equal, or each stratum once with its number,"
                            + " such as 1=10,2=20");
                }
                sizes.put(stratum, Integer.parseInt(number));
            }
            return new Allocation.Given(sizes);
        }
    }
}
