package org.wadeplan.planner.decon;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a bath must reach, read back from the words of a step: {@code 20 g/L product}, {@code 60 °C},
 * {@code 0.4 % active at 20 °C}.
 *
 * @param strength with {@code basis}
 * @param tempC temperature to hold, degrees C
 */
public record BathTarget(OptionalDouble strength, Optional<String> basis, OptionalDouble tempC) {

    private static final Pattern TEMPERATURE = Pattern.compile("(?:at )?(-?[0-9.]+) °C$");
    private static final Pattern STRENGTH = Pattern.compile("^([0-9.]+) (.+)$");

    /** Nothing to reach where the words hold neither. */
    public static BathTarget of(String words) {
        String rest = words.strip();
        OptionalDouble tempC = OptionalDouble.empty();
        Matcher temperature = TEMPERATURE.matcher(rest);
        if (temperature.find()) {
            tempC = OptionalDouble.of(Double.parseDouble(temperature.group(1)));
            rest = rest.substring(0, temperature.start()).strip();
        }
        Matcher strength = STRENGTH.matcher(rest);
        return strength.matches()
                ? new BathTarget(
                        OptionalDouble.of(Double.parseDouble(strength.group(1))), Optional.of(strength.group(2)), tempC)
                : new BathTarget(OptionalDouble.empty(), Optional.empty(), tempC);
    }

    public boolean hot() {
        return tempC.isPresent() && tempC.getAsDouble() > 30;
    }
}
