package org.wadeplan.desktop.app;

import java.nio.file.Path;
import java.util.Optional;

/** Questions to the person. Tests answer in their place. */
public interface Asking {

    /** A folder that exists; empty where the person thinks better of it. */
    Optional<Path> folder(String title, Optional<Path> startIn);
}
