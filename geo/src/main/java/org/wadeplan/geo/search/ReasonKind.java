package org.wadeplan.geo.search;

/** Why a stretch holds no reach. Where there are several reasons, the one that stands first here counts as the first. */
public enum ReasonKind {
    /** The line is no stream: a lake's centre line, a pipe, a canal. */
    LINE_KIND,
    TIDAL,
    /** On land without consent, or too near to it. */
    LAND,
    /** Nobody can say how long a reach would be here. */
    NO_LENGTH,
    ORDER,
    WIDTH,
    SLOPE,
    ACCESS,
    CONFLUENCE,
    /** A bridge, culvert, weir, ford or other place of the barrier table. */
    OBSTACLE,
    LINE_END,
    /** Another reach is there already, or too near along the network. */
    TAKEN,
    /** Nothing rules it out, but what is left is shorter than a reach. */
    TOO_SHORT
}
