package org.wadeplan.planner.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Round;

/** A copy of the resolved demo round to break in one place. */
final class BrokenRound {

    /**
     * A fault and what must come of it.
     *
     * @param sentences severity, code and sentence of every problem, worst first
     */
    record Case(UnaryOperator<BrokenRound> fault, List<String> sentences) {

        Case(UnaryOperator<BrokenRound> fault, String... sentences) {
            this(fault, List.of(sentences));
        }

        @Override
        public String toString() {
            return String.join(" / ", sentences);
        }
    }

    private final Path folder;

    private BrokenRound(Path folder) {
        this.folder = folder;
    }

    /** Copies the demo round's files, without the folders beside them. */
    static BrokenRound in(Path emptyFolder) {
        try (Stream<Path> files = Files.list(DemoRound.folder("ilvermoor"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, emptyFolder.resolve(file.getFileName()));
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return new BrokenRound(emptyFolder);
    }

    Path folder() {
        return folder;
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    /** Replaces a text that must stand in the file exactly once. */
    BrokenRound with(String file, String old, String replacement) {
        String text = text(file);
        int first = text.indexOf(old);
        if (first < 0 || text.indexOf(old, first + 1) >= 0) {
            throw new IllegalArgumentException(file + " does not hold once: " + old);
        }
        return whole(file, text.replace(old, replacement));
    }

    /** Adds a line at the end. */
    BrokenRound plus(String file, String line) {
        return whole(file, text(file) + line + "\n");
    }

    /** Writes the whole file. */
    BrokenRound whole(String file, String text) {
        try {
            Files.writeString(file(file), text);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return this;
    }

    BrokenRound without(String file) {
        try {
            Files.delete(file(file));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return this;
    }

    String text(String file) {
        try {
            return Files.readString(file(file), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    Checked<Round> read() {
        return RoundReader.read(folder);
    }

    /** Every problem as a person reads it, with its severity before it. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        for (Problem problem : read().problems()) {
            sentences.add(problem.severity() + " " + problem.code() + " " + problem.sentence());
        }
        return sentences;
    }
}
