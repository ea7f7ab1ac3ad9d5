package org.wadeplan.desktop.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.cleaning.SetState;
import org.wadeplan.desktop.kit.LoadRow;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.week.BarKind;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.decon.ChemicalCaution;
import org.wadeplan.planner.decon.ChemicalCautions;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.VisitPart;

class BundleTest {

    private static final Pattern ASKED = Pattern.compile("Words\\.(of|count)\\(\\s*\"([^\"]+)\"");

    private static List<MatchResult> asked() throws IOException {
        List<MatchResult> all = new ArrayList<>();
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
            for (Path source :
                    sources.filter(path -> path.toString().endsWith(".java")).toList()) {
                ASKED.matcher(Files.readString(source)).results().forEach(all::add);
            }
        }
        return all;
    }

    @Test
    void everyTextThatTheSourcesAskForIsInTheBundle() throws IOException {
        List<String> missing = new ArrayList<>();
        for (MatchResult call : asked()) {
            String key = call.group(2);
            List<String> keys = call.group(1).equals("count") ? List.of(key + ".one", key + ".other") : List.of(key);
            keys.stream()
                    .filter(needed -> !needed.endsWith(".") && !needed.endsWith(".one.one"))
                    .filter(needed -> !Words.has(needed) && !key.endsWith("."))
                    .forEach(missing::add);
        }
        assertThat(asked()).hasSizeGreaterThan(50);
        assertThat(missing).isEmpty();
    }

    @Test
    void everyStateHasAWord() {
        for (BarKind kind : BarKind.values()) {
            assertThat(kind.words()).isNotBlank();
        }
        for (VisitPart part : VisitPart.values()) {
            assertThat(Words.of("part." + part.word())).isNotBlank();
        }
        for (Severity severity : Severity.values()) {
            assertThat(Words.of("severity." + severity.name())).isNotBlank();
            assertThat(Words.of("problems.show." + severity.name())).isNotBlank();
            assertThat(Mark.valueOf(severity.name()).outline()).isNotEmpty();
        }
        for (SetState state : SetState.values()) {
            assertThat(state.words()).isNotBlank();
        }
        for (StoreState state : StoreState.values()) {
            assertThat(Words.of("store." + state.name())).isNotBlank();
        }
        for (KitPurpose purpose : KitPurpose.values()) {
            assertThat(Words.of("purpose." + purpose.name())).isNotBlank();
        }
        for (LoadRow.Box box : LoadRow.Box.values()) {
            assertThat(Words.of("kit.box." + box)).isNotBlank();
        }
        for (ChemicalCaution caution : ChemicalCautions.shipped().rows()) {
            assertThat(Words.of("caution." + caution.topic())).isNotBlank();
        }
        for (Screen screen : Screen.values()) {
            assertThat(Words.of("screen." + screen.name())).isNotBlank();
        }
    }

    @Test
    void valuesAreFilledInAsTheyAre() {
        assertThat(Words.of("fact.span", "Mon 08:30", "13:30", "5 h")).isEqualTo("Mon 08:30 to 13:30 (5 h)");
        assertThat(Words.count("count.error", 1)).isEqualTo("1 error");
        assertThat(Words.count("count.error", 0)).isEqualTo("0 errors");
    }

    @Test
    void lengthsOfTimeAreSaidInHoursAndMinutes() {
        assertThat(Times.minutes(59)).isEqualTo("59 min");
        assertThat(Times.minutes(60)).isEqualTo("1 h");
        assertThat(Times.minutes(145)).isEqualTo("2 h 25 min");
    }
}
