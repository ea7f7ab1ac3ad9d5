package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wadeplan.planner.decon.ReferenceRows.number;
import static org.wadeplan.planner.decon.ReferenceRows.text;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HotBathReferenceTest {

    static List<Map<String, String>> rows() {
        return ReferenceRows.of("hot_bath.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void startsAsHotAsTheEstimateSays(Map<String, String> row) {
        assertThat(HotBath.startTempC(
                        number(row, "hold_temp_c"),
                        number(row, "contact_min"),
                        Boolean.parseBoolean(text(row, "lidded"))))
                .hasValue((int) number(row, "start_temp_c"));
    }

    static List<Map<String, String>> losses() {
        return ReferenceRows.of("heat_loss.csv");
    }

    @ParameterizedTest
    @MethodSource("losses")
    void losesHeatAsTheEstimateSays(Map<String, String> row) {
        assertThat(HotBath.lossKPerMin(number(row, "bath_temp_c"), Boolean.parseBoolean(text(row, "lidded"))))
                .isEqualTo(number(row, "loss_k_per_min"));
    }

    /** Own estimate: 10 kg of gear and 2 L of water at 12 °C take 3.5 K off a 60 L bath at 50 °C, 3.1 at 45, 4.5 at 60. */
    @Test
    void coldGearTakesSomeKelvinOff() {
        assertThat(HotBath.gearDropK(50)).isCloseTo(3.5, within(0.06));
        assertThat(HotBath.gearDropK(45)).isCloseTo(3.1, within(0.06));
        assertThat(HotBath.gearDropK(60)).isCloseTo(4.5, within(0.06));
    }

    @Test
    void saysNothingOutsideTheTemperaturesItWasMadeFor() {
        assertThat(HotBath.startTempC(44.9, 10, true)).isEmpty();
        assertThat(HotBath.startTempC(60.1, 10, true)).isEmpty();
        assertThat(HotBath.BASIS).contains("estimate");
    }
}
