package org.wadeplan.geo.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.wadeplan.geo.problem.DiskException;

/** Writes the map files of both demo rounds into the folder {@code demo-sites}. */
public final class DemoStreams {

    private DemoStreams() {}

    /** Takes one argument, the folder that holds the demo rounds. */
    public static void main(String[] arguments) throws DiskException, IOException {
        write(Path.of(arguments[0]));
    }

    static void write(Path demoSites) throws DiskException, IOException {
        Path good = Files.createDirectories(demoSites.resolve("ilvermoor"));
        Path troubled = Files.createDirectories(demoSites.resolve("ilvermoor-troubled"));
        DemoGeometry.write(good);
        DemoGeometry.write(troubled);
        DemoFaults.write(Files.createDirectories(troubled.resolve("bad")));
    }
}
