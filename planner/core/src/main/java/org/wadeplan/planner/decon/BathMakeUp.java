package org.wadeplan.planner.decon;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wadeplan.planner.round.DeconResource;

/** Says how to make a bath up for a step, or how hot to start it. */
final class BathMakeUp {

    private static final Pattern TEMPERATURE = Pattern.compile("([0-9.]+) °C");

    private final List<DeconResource> resources;

    BathMakeUp(List<DeconResource> resources) {
        this.resources = resources;
    }

    /** Empty for a step that is no soak, or one about which the round says too little. */
    Optional<String> words(DeconStep step) {
        if (!step.step().equals("soak")) {
            return Optional.empty();
        }
        Matcher temperature = TEMPERATURE.matcher(step.target().orElse(""));
        if (temperature.find()) {
            return hot(Double.parseDouble(temperature.group(1)), step.minutes());
        }
        return resources.stream()
                .filter(resource ->
                        step.resource().filter(resource.id()::equals).isPresent())
                .findFirst()
                .flatMap(BathMakeUp::bath);
    }

    private static Optional<String> hot(double holdTempC, int minutes) {
        var lidded = HotBath.startTempC(holdTempC, minutes, true);
        var open = HotBath.startTempC(holdTempC, minutes, false);
        return lidded.isEmpty() || open.isEmpty()
                ? Optional.empty()
                : Optional.of("start at " + lidded.getAsInt() + " °C lidded, " + open.getAsInt() + " °C open ("
                        + HotBath.BASIS + ")");
    }

    private static Optional<String> bath(DeconResource resource) {
        if (resource.volumeL().isEmpty() || resource.strengthGL().isEmpty()) {
            return Optional.empty();
        }
        double volumeL = resource.volumeL().getAsDouble();
        double kg = Dilution.powderKg(volumeL, resource.strengthGL().getAsDouble());
        return Optional.of(
                Words.number(kg) + " kg made up to " + Words.number(volumeL) + " L; tip it out after the day");
    }
}
