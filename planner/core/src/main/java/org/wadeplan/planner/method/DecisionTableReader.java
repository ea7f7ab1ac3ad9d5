package org.wadeplan.planner.method;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads the first decision table of a DMN file (OMG, Decision Model and Notation 1.1 to 1.5: the namespace differs, the
 * table's structure does not), or a table in a CSV file with the same cells.
 */
public final class DecisionTableReader {

    /** A table of ten thousand rules over eight inputs has some 15 MB. */
    static final int LARGEST_BYTES = 40_000_000;

    private static final Set<String> NAMESPACES = Set.of(
            "http://www.omg.org/spec/DMN/20151101/dmn.xsd",
            "http://www.omg.org/spec/DMN/20180521/MODEL/",
            "https://www.omg.org/spec/DMN/20191111/MODEL/",
            "https://www.omg.org/spec/DMN/20211108/MODEL/",
            "https://www.omg.org/spec/DMN/20230324/MODEL/");

    private DecisionTableReader() {}

    /**
     * Reads a table and reports every fault in it at once, each with its rule, its column and its position in the cell.
     *
     * <p>Where some rules have faults the value still holds the others, under their own numbers, so that the caller can
     * go on to check names; it must not be planned with while {@link Checked#hasErrors()}.
     *
     * @param displayName what to call the file in messages: its name relative to the round folder
     */
    public static Checked<DecisionTable> read(Path file, String displayName) {
        byte[] bytes;
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                return Checked.failed(whole("dmn-too-large", displayName, "the file is larger than 40 MB"));
            }
            bytes = Files.readAllBytes(file);
        } catch (IOException unreadable) {
            return Checked.failed(whole("dmn-unreadable", displayName, "the file is missing or cannot be read"));
        }
        return read(bytes, displayName);
    }

    static Checked<DecisionTable> read(byte[] bytes, String displayName) {
        if (bytes.length == 0) {
            return Checked.failed(whole("dmn-empty", displayName, "the file is empty"));
        }
        if (displayName.toLowerCase(Locale.ROOT).endsWith(".csv")) {
            return CsvDecision.read(bytes, displayName).then(decision -> new TableAssembly(
                            displayName, sha256(bytes), decision, new ItemTypes(decision), List.of())
                    .assemble());
        }
        return XmlTree.read(bytes, displayName).then(root -> table(root, displayName, sha256(bytes)));
    }

    private static Checked<DecisionTable> table(XmlElement root, String file, String hash) {
        if (!root.name().equals("definitions") || !NAMESPACES.contains(root.namespace())) {
            return Checked.failed(Problem.error(
                    "dmn-namespace",
                    SourcePlace.line(file, root.line()),
                    "the outermost element is " + root.name() + " in the namespace \"" + root.namespace() + "\"",
                    "definitions in a namespace of DMN 1.1 to 1.5",
                    "save the table as DMN 1.3"));
        }
        List<XmlElement> holders = root.everything()
                .filter(element -> element.child("decisionTable").isPresent())
                .toList();
        if (holders.isEmpty()) {
            return Checked.failed(whole("dmn-no-table", file, "no decision table in it"));
        }
        XmlElement holder = holders.get(0);
        List<Problem> problems = new ArrayList<>(language(root, file));
        if (holders.size() > 1) {
            problems.add(several(holders, file));
        }
        return new TableAssembly(file, hash, holder, new ItemTypes(root), problems).assemble();
    }

    private static Problem several(List<XmlElement> holders, String file) {
        List<String> names = holders.stream()
                .map(holder -> holder.attribute("name").orElse("without a name"))
                .toList();
        return Problem.note(
                "dmn-several-tables",
                SourcePlace.file(file),
                String.format(Locale.ROOT, "%d decision tables: %s", names.size(), String.join(", ", names)),
                "one table; the first is used: " + names.get(0),
                "keep the method table in a file of its own");
    }

    private static List<Problem> language(XmlElement root, String file) {
        Optional<String> foreign = root.everything()
                .flatMap(element -> element.attribute("expressionLanguage").stream())
                .filter(language -> !language.toUpperCase(Locale.ROOT).contains("FEEL"))
                .findFirst();
        return foreign
                .map(language -> Problem.error(
                        "dmn-language",
                        SourcePlace.file(file),
                        "cells in the expression language \"" + language + "\"",
                        "FEEL, the standard's own",
                        "write the cells as unary tests of FEEL"))
                .stream()
                .toList();
    }

    private static Problem whole(String code, String file, String found) {
        return Problem.error(
                code,
                SourcePlace.file(file),
                found,
                "a DMN 1.1 to 1.5 file with one decision table",
                "export the method table again from your DMN modeller");
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("Every Java platform has SHA-256", missing);
        }
    }
}
