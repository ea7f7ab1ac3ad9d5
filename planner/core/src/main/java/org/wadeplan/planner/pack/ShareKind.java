package org.wadeplan.planner.pack;

/** A file that can be written alone, for another program. */
public enum ShareKind {
    /** GPX 1.1: stakes as waypoints, each reach as a route. */
    GPX,
    /** iCalendar: visits and cleanings. */
    ICS,
    /** GeoPackage: reaches, stakes, streams. */
    GPKG,
    /** GeoJSON by RFC 7946: reaches. */
    GEOJSON
}
