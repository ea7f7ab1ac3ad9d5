package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The machine's language changes neither what is read nor what is said. */
class LocaleTest {

    private final Locale before = Locale.getDefault();

    @TempDir
    Path temp;

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "tr"})
    void readsAndSaysTheSame(String language) {
        Locale.setDefault(Locale.forLanguageTag(language));
        List<String> sentences = BrokenRound.in(temp)
                .with("sites.csv", "6.1,flowing,0.41,0.74,", "6.1,FLOWING,0.41,\"0,74\",")
                .with("certificates.csv", "2027-03-15,2028-03-14", "2027-03-15,07/09/2027")
                .with("consents.csv", ",-20.956110,46.138348", ",46.138348,-20.956110")
                .sentences();
        assertThat(sentences)
                .containsExactly(
                        "ERROR date-ambiguous certificates.csv, line 3 (E2 service), column valid_until: \"07/09/2027\" can"
                                + " be 7 September 2027 or 9 July 2027. Allowed: a date as year-month-day, such as"
                                + " 2027-09-07. Do: write 2027-09-07 or 2027-07-09, whichever is meant",
                        "ERROR gate-far consents.csv, line 2 (C-BRN-01), column gate_lon_deg: point is about 10 000 km from"
                                + " the project area; swapping the columns puts it 240 m from BRN-01. Allowed: a gate at"
                                + " most 5.0 km from its site. Do: swap gate_lon_deg and gate_lat_deg",
                        "ERROR decimal-comma sites.csv, line 3 (BRN-02), column max_depth_m: \"0,74\" has a comma; use a"
                                + " point: 0.74. Allowed: a number from 0 to 6 m");
    }
}
