package org.wadeplan.desktop.session;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;

/**
 * What was written.
 *
 * @param folder where
 * @param files in the order of the list of contents
 * @param leftOver files of an earlier pack whose prints must be withdrawn
 */
public record WrittenPack(Path folder, List<WrittenFile> files, List<String> leftOver) {

    /**
     * One file.
     *
     * @param pages for what can be printed
     */
    public record WrittenFile(String name, String what, long bytes, OptionalInt pages) {}

    /** Pages to print, all files together. */
    public int pages() {
        return files.stream().mapToInt(file -> file.pages().orElse(0)).sum();
    }
}
