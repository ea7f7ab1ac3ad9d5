package org.wadeplan.planner.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;

/** Reads a finished pack once more, before anyone sees it, for phones and landholders of the private tables. */
final class PrivacyGuard {

    private PrivacyGuard() {}

    /** What must not leave, by file; empty where nothing of it was found, or where the round has no private tables. */
    static List<Problem> check(Round round, List<PackFile> files, Path folder) throws DiskException {
        PrivateCells cells = PrivateCells.of(round.folder(), publicNames(round));
        List<Problem> problems = new ArrayList<>();
        if (cells.count() > 0) {
            for (PackFile file : files) {
                problems.addAll(cells.foundIn(file.name(), text(folder.resolve(file.name()))));
            }
        }
        return List.copyOf(problems);
    }

    private static List<String> publicNames(Round round) {
        return Stream.of(
                        round.sites().stream().map(Site::name),
                        round.waters().stream().map(Water::name),
                        Stream.of(
                                round.header().title(),
                                round.header().agency(),
                                round.header().depot().name()))
                .flatMap(names -> names)
                .toList();
    }

    private static String text(Path file) throws DiskException {
        try {
            if (!file.toString().endsWith(".pdf")) {
                return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            }
            try (PDDocument document = Loader.loadPDF(file.toFile())) {
                return new PDFTextStripper().getText(document);
            }
        } catch (IOException failure) {
            throw new DiskException(file, "the finished file cannot be read back", "write the pack again", failure);
        }
    }
}
