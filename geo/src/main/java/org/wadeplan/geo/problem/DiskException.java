package org.wadeplan.geo.problem;

import java.nio.file.Path;

/** The disk refused: a folder is read-only, full or gone. What stood in the target before is still there, whole. */
public final class DiskException extends Exception {

    private final String file;
    private final String what;
    private final String remedy;

    public DiskException(Path path, String what, String remedy, Throwable cause) {
        super(path + ": " + what, cause);
        this.file = path.toString();
        this.what = what;
        this.remedy = remedy;
    }

    /** For a person, with the path, what happened and what to do. */
    public Problem problem() {
        return Problem.error("disk", SourcePlace.file(file), what, "a folder that can be written to", remedy);
    }
}
