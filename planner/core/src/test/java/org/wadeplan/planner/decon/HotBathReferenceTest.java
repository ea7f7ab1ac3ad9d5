package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;
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

    @Test
    void saysNothingOutsideTheTemperaturesItWasMadeFor() {
        assertThat(HotBath.startTempC(44.9, 10, true)).isEmpty();
        assertThat(HotBath.startTempC(60.1, 10, true)).isEmpty();
        assertThat(HotBath.BASIS).contains("estimate");
    }
}
