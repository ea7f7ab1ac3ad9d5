package org.wadeplan.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the tail: what separates well-kept code bases is their longest file and method, not their average. */
class SourceSizeTest {

    private static final int MOST_LINES_IN_A_FILE = 400;
    private static final int MOST_LINES_IN_A_METHOD = 40;

    /** A line that may begin a method or constructor, four blanks deep or eight in a nested type. */
    private static final Pattern METHOD_START = Pattern.compile("^( {4}| {8})"
            + "(?!(?:return|throw|new|if|for|while|switch|try|else|do|case|assert)\\b)[\\w<][^=.]*\\(.*[^,;]$");

    private static final Pattern TYPE = Pattern.compile(".*\\b(class|record|interface|enum)\\b.*");

    @Test
    void noFileIsTooLong() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : sources("")) {
            int lines = Files.readAllLines(file).size();
            if (lines > MOST_LINES_IN_A_FILE) {
                tooLong.add(file.getFileName() + ": " + lines);
            }
        }
        assertThat(tooLong).as("files over %d lines", MOST_LINES_IN_A_FILE).isEmpty();
    }

    @Test
    void noMethodIsTooLong() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : sources("main")) {
            tooLong.addAll(longMethods(file));
        }
        assertThat(tooLong).as("methods over %d lines", MOST_LINES_IN_A_METHOD).isEmpty();
    }

    @Test
    void theMeasureSeesALongMethod() {
        List<String> lines = new ArrayList<>(List.of("class A {", "    void b(int c) {"));
        lines.addAll(Collections.nCopies(MOST_LINES_IN_A_METHOD, "        work();"));
        lines.addAll(List.of("    }", "}"));
        assertThat(longMethods("A.java", lines)).hasSize(1);
    }

    private static List<String> longMethods(Path file) throws IOException {
        return longMethods(String.valueOf(file.getFileName()), Files.readAllLines(file));
    }

    private static List<String> longMethods(String name, List<String> lines) {
        List<String> found = new ArrayList<>();
        for (int start = 0; start < lines.size(); start++) {
            Matcher matcher = METHOD_START.matcher(lines.get(start));
            if (matcher.matches() && !TYPE.matcher(lines.get(start)).matches() && hasBody(lines, start)) {
                int end = start;
                while (end < lines.size() - 1 && !lines.get(end).equals(matcher.group(1) + "}")) {
                    end++;
                }
                if (end - start + 1 > MOST_LINES_IN_A_METHOD) {
                    found.add(name + ", line " + (start + 1) + ": " + (end - start + 1));
                }
            }
        }
        return found;
    }

    /** A signature goes on until a brace opens; a statement or an abstract method ends in a semicolon first. */
    private static boolean hasBody(List<String> lines, int start) {
        for (int i = start; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.endsWith("{")) {
                return !line.endsWith("-> {") && !line.contains("= new");
            }
            if (line.endsWith(";") || line.endsWith("}")) {
                return false;
            }
        }
        return false;
    }

    private static List<Path> sources(String kind) throws IOException {
        Path top = ProjectFolder.ROOT;
        try (Stream<Path> all = Files.walk(top)) {
            List<Path> found = all.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !top.relativize(file).toString().contains("target"))
                    .filter(file -> file.toString().contains("src/" + kind))
                    .sorted()
                    .toList();
            assertThat(found).as("source files below %s", top).isNotEmpty();
            return found;
        }
    }
}
