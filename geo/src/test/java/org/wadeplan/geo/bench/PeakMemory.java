package org.wadeplan.geo.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;

/** The most memory that this process has ever held. */
final class PeakMemory {

    private static final Path STATUS = Path.of("/proc/self/status");

    private PeakMemory() {}

    /** All memory of the process where the system tells it (Linux), else the most that each part of the heap held. */
    static double gigabytes() {
        try {
            for (String line : Files.readAllLines(STATUS)) {
                if (line.startsWith("VmHWM:")) {
                    return Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024.0 / 1024.0;
                }
            }
        } catch (IOException noSuchFile) {
            // Not Linux: the heap has to do.
        }
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                        .map(MemoryPoolMXBean::getPeakUsage)
                        .mapToLong(usage -> usage.getUsed())
                        .sum()
                / 1024.0
                / 1024.0
                / 1024.0;
    }
}
