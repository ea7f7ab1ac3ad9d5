package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No problem code of this package goes without a test that provokes it. */
class EveryCodeIsTriedTest {

    private static final Pattern CODE =
            Pattern.compile("(?:Fault|fault|error|warning|note|problem)\\(\\s*\"([a-z0-9]+(?:-[a-z0-9]+)*)\"");
    private static final Path PACKAGE = Path.of("java", "org", "wadeplan", "planner", "files");

    /**
     * Not provoked: {@code file-unreadable} needs a file that nobody may open, while the tests may run as root.
     */
    private static final Set<String> UNTRIED = Set.of("file-unreadable");

    private static String sources(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().map(EveryCodeIsTriedTest::text).collect(Collectors.joining("\n"));
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void everyCodeStandsInATest() throws IOException {
        TreeSet<String> codes = new TreeSet<>();
        Matcher code = CODE.matcher(sources(Path.of("src", "main").resolve(PACKAGE)));
        while (code.find()) {
            codes.add(code.group(1));
        }
        assertThat(codes).hasSizeGreaterThan(50);
        String tests = sources(Path.of("src", "test").resolve(PACKAGE));
        codes.removeAll(UNTRIED);
        codes.removeIf(
                known -> Pattern.compile("\\b" + known + "\\b").matcher(tests).find());
        assertThat(codes).as("codes that no test names").isEmpty();
    }
}
