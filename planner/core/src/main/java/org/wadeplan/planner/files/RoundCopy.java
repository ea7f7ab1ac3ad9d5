package org.wadeplan.planner.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.DiskException;

/** Copies a round folder's own files to a new folder. */
public final class RoundCopy {

    /** Folders that belong to the project, not to a round. */
    private static final Set<String> LEFT_OUT = Set.of("expected", "bad");

    private RoundCopy() {}

    /**
     * Copies to a folder that does not exist yet, or is empty.
     *
     * @return how many files were copied
     */
    public static int copy(Path source, Path target) throws DiskException {
        if (!Files.isDirectory(source)) {
            throw new DiskException(
                    source,
                    "there is no round folder there",
                    "check the path",
                    new NoSuchFileException(source.toString()));
        }
        try {
            refuseIfInUse(target);
            Files.createDirectories(target);
            int count = 0;
            for (Path file : filesOf(source)) {
                Path copy = target.resolve(source.relativize(file).toString());
                Path parent = copy.getParent();
                if (parent != null) {
                    Files.createDirectories(parent);
                }
                Files.copy(file, copy);
                count++;
            }
            return count;
        } catch (IOException fault) {
            throw new DiskException(target, "could not be written", "choose a folder that you may write to", fault);
        }
    }

    private static void refuseIfInUse(Path target) throws IOException, DiskException {
        if (!Files.exists(target)) {
            return;
        }
        if (!Files.isDirectory(target)) {
            throw taken(target, "that is a file, not a folder");
        }
        try (Stream<Path> content = Files.list(target)) {
            if (content.findAny().isPresent()) {
                throw taken(target, "the folder is not empty");
            }
        }
    }

    private static DiskException taken(Path target, String what) {
        return new DiskException(
                target,
                what,
                "choose a folder that does not exist yet",
                new FileAlreadyExistsException(target.toString()));
    }

    private static List<Path> filesOf(Path source) throws IOException {
        try (Stream<Path> all = Files.walk(source)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !LEFT_OUT.contains(
                            source.relativize(file).getName(0).toString()))
                    .filter(file -> !String.valueOf(file.getFileName()).equals("plan.json"))
                    .sorted()
                    .toList();
        }
    }
}
