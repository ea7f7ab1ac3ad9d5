package org.wadeplan.geo.io;

import java.time.Instant;
import java.util.List;
import org.wadeplan.geo.crs.LonLat;

/**
 * What goes onto a handheld.
 *
 * @param name what the file is called on the device
 * @param description one sentence; never private facts, since devices get lost
 * @param created the time to state as that of the content
 * @param waypoints places, such as stakes
 * @param routes places in an order to walk them
 */
public record GpxContent(
        String name, String description, Instant created, List<Waypoint> waypoints, List<Route> routes) {

    public GpxContent {
        waypoints = List.copyOf(waypoints);
        routes = List.copyOf(routes);
    }

    /**
     * A named place.
     *
     * @param name at most 10 characters, so that any handheld shows it whole
     * @param description a few words for devices that show them; never private facts
     */
    public record Waypoint(String name, String description, LonLat at) {}

    /**
     * An order in which to walk places.
     *
     * @param name at most 10 characters
     * @param description a few words; never private facts
     * @param stops the first to walk to first
     */
    public record Route(String name, String description, List<Waypoint> stops) {

        public Route {
            stops = List.copyOf(stops);
        }
    }
}
