package org.wadeplan.desktop.app;

import java.nio.file.Path;
import java.util.Optional;
import org.wadeplan.desktop.find.FindForm;
import org.wadeplan.desktop.session.SeenPest;

/** Questions to the person. Tests answer in their place. */
public interface Asking {

    /** A folder that exists; empty where the person thinks better of it. */
    Optional<Path> folder(String title, Optional<Path> startIn);

    /** Which pest was seen where and when; empty where the person thinks better of it. */
    Optional<SeenPest> pest(FindForm form);
}
