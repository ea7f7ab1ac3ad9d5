package org.wadeplan.planner.pack;

import java.nio.file.Path;
import java.util.List;

/**
 * What was written.
 *
 * @param folder where
 * @param files in the order of the list of contents
 * @param leftOver PDFs of crew-days that an earlier pack left in the folder and this one has not: withdraw their prints
 */
public record PackResult(Path folder, List<PackFile> files, List<String> leftOver) {

    /** Pages to print, all PDFs together. */
    public int pages() {
        return files.stream().mapToInt(file -> file.pages().orElse(0)).sum();
    }
}
