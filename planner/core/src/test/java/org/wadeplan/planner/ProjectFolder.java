package org.wadeplan.planner;

import java.nio.file.Files;
import java.nio.file.Path;

/** The project's own root, wherever a test is started from. */
public final class ProjectFolder {

    public static final Path ROOT = above(Path.of("").toAbsolutePath());

    private ProjectFolder() {}

    private static Path above(Path start) {
        for (Path folder = start; folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve("DEVELOPERS.md"))) {
                return folder;
            }
        }
        throw new IllegalStateException("No DEVELOPERS.md above " + start + ": start tests inside the project");
    }
}
