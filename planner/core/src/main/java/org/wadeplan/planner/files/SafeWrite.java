package org.wadeplan.planner.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: to a temporary file in the same folder, flushed, then moved. What was there before
 * stays beside it as {@code .bak}.
 */
public final class SafeWrite {

    private SafeWrite() {}

    /** Writes text as UTF-8. */
    public static void text(Path target, String text) throws FileFault {
        bytes(target, text.getBytes(StandardCharsets.UTF_8));
    }

    public static void bytes(Path target, byte[] content) throws FileFault {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null) {
            throw new FileFault(target, "that is not a file in a folder", "choose another name");
        }
        Path temporary = folder.resolve("." + target.getFileName() + ".writing");
        try {
            try (FileChannel channel = FileChannel.open(
                    temporary,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(content);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            if (Files.exists(target)) {
                Files.copy(target, folder.resolve(target.getFileName() + ".bak"), StandardCopyOption.REPLACE_EXISTING);
            }
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException fault) {
            discard(temporary);
            throw FileFault.of(target, fault);
        }
    }

    private static void discard(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException ignored) {
            // What matters is reported already: the write itself failed.
        }
    }
}
