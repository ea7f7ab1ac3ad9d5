package org.wadeplan.planner.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** The disk would not do what was asked. The message says which path, what happened, and what to do. */
public final class FileFault extends Exception {

    private static final long serialVersionUID = 1L;

    public FileFault(Path path, String what, String remedy) {
        super(path + ": " + what + ". Nothing was half written. Do: " + remedy);
    }

    /** Words for what a disk operation threw. */
    public static FileFault of(Path path, IOException cause) {
        FileFault fault = worded(path, cause);
        fault.initCause(cause);
        return fault;
    }

    private static FileFault worded(Path path, IOException cause) {
        if (cause instanceof AccessDeniedException) {
            return new FileFault(
                    path, "you have no right to write there", "choose another folder, or change its rights");
        }
        if (cause instanceof NoSuchFileException) {
            return new FileFault(path, "the folder does not exist", "make it first, or choose another");
        }
        if (cause instanceof FileAlreadyExistsException || cause instanceof NotDirectoryException) {
            return new FileFault(path, "a file of that name stands in the way", "choose another name");
        }
        String reason = cause instanceof FileSystemException disk ? reason(disk) : "the disk refused";
        return new FileFault(path, reason, "check that the disk is there, writable and not full");
    }

    private static String reason(FileSystemException fault) {
        String reason = fault.getReason();
        return reason == null ? "the disk refused" : "the disk refused: " + reason;
    }
}
