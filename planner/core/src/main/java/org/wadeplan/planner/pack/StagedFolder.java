package org.wadeplan.planner.pack;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.DiskException;

/**
 * A temporary folder beside the real one. Files are made there and moved one by one once all of them are whole, so a
 * writing that fails half way leaves the earlier one as it was.
 */
public final class StagedFolder implements AutoCloseable {

    private final Path target;
    private final Path stage;

    private StagedFolder(Path target, Path stage) {
        this.target = target;
        this.stage = stage;
    }

    public static StagedFolder beside(Path folder) throws DiskException {
        Path target = folder.toAbsolutePath().normalize();
        try {
            Files.createDirectories(target);
            if (!Files.isWritable(target)) {
                throw refused(target, "there is no permission to write into it", new IOException("not writable"));
            }
            Path parent = target.getParent() == null ? target : target.getParent();
            return new StagedFolder(target, Files.createTempDirectory(parent, ".pack-"));
        } catch (IOException failure) {
            throw refused(target, "the folder cannot be made or written to", failure);
        }
    }

    /** Where files are made. */
    public Path folder() {
        return stage;
    }

    private Path file(String name) {
        return stage.resolve(name);
    }

    /** A file that somebody else has made in {@link #folder()}. */
    PackFile made(String name, String what) throws DiskException {
        try {
            return new PackFile(name, what, Files.size(file(name)), OptionalInt.empty());
        } catch (IOException failure) {
            throw refused(file(name), "the file has gone", failure);
        }
    }

    public long write(String name, byte[] content) throws DiskException {
        try {
            Files.write(file(name), content);
            return content.length;
        } catch (IOException failure) {
            throw refused(file(name), "the file cannot be written", failure);
        }
    }

    /** Moves every file into the real folder, in the order of their names. */
    public void publish() throws DiskException {
        for (Path made : made()) {
            Path place = target.resolve(made.getFileName());
            try {
                move(made, place);
            } catch (IOException failure) {
                throw refused(place, "the finished file cannot be moved into the folder", failure);
            }
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException otherDisk) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private List<Path> made() throws DiskException {
        try (Stream<Path> files = Files.list(stage)) {
            return files.sorted().toList();
        } catch (IOException failure) {
            throw refused(stage, "the temporary folder has gone", failure);
        }
    }

    /** Removes the temporary folder with whatever is left in it. */
    @Override
    public void close() throws DiskException {
        List<Path> rest = new ArrayList<>(made());
        rest.add(stage);
        for (Path path : rest) {
            try {
                Files.deleteIfExists(path);
            } catch (IOException failure) {
                throw refused(path, "the temporary file cannot be removed", failure);
            }
        }
    }

    private static DiskException refused(Path path, String what, IOException cause) {
        return new DiskException(path, what, "choose a folder that you may write to, with room for about 20 MB", cause);
    }
}
