package org.wadeplan.planner.pack;

import java.nio.file.Path;
import java.util.List;
import org.wadeplan.geo.problem.Problem;

/**
 * What was written.
 *
 * @param folder where
 * @param files in the order of the list of contents
 * @param leftOver PDFs of crew-days that an earlier pack left in the folder and this one has not: withdraw their prints
 * @param problems why a file was not made, such as names that a handheld would confuse; it is then not in the list;
 *     or what stopped the whole pack
 */
public record PackResult(Path folder, List<PackFile> files, List<String> leftOver, List<Problem> problems) {

    /** False where a problem stopped the whole pack: the folder is as it was. */
    public boolean written() {
        return !files.isEmpty();
    }

    /** Pages to print, all PDFs together. */
    public int pages() {
        return files.stream().mapToInt(file -> file.pages().orElse(0)).sum();
    }
}
