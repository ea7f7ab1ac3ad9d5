package org.wadeplan.planner.round;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.reach.Bank;

/**
 * A place that the round visits.
 *
 * @param shortCode four characters for handheld waypoints, unique in the round
 * @param start downstream end of the reach, in the round's metric coordinate system
 * @param reserveFor the site that this one stands in for; empty for a site of the list proper
 * @param parcel land parcel it lies on
 * @param nightAccess whether people may be on the land after dark; empty where nobody asked
 * @param phoneCoverage whether a phone works there; empty where not known
 * @param stakeBank the bank for the stakes; empty where the side of access may choose it
 * @param care id of the nearest place of emergency care
 */
public record Site(
        String id,
        String name,
        String stream,
        String shortCode,
        MetricPoint start,
        Priority priority,
        Optional<String> reserveFor,
        Optional<String> parcel,
        Conditions conditions,
        Optional<Boolean> nightAccess,
        OptionalDouble walkInM,
        Optional<Boolean> phoneCoverage,
        Optional<String> parking,
        Optional<Bank> stakeBank,
        Optional<String> care,
        OptionalInt careDriveMin,
        Optional<String> note) {

    /** The same site with other conditions, such as those measured on arrival. */
    public Site with(Conditions measured) {
        return new Site(
                id,
                name,
                stream,
                shortCode,
                start,
                priority,
                reserveFor,
                parcel,
                measured,
                nightAccess,
                walkInM,
                phoneCoverage,
                parking,
                stakeBank,
                care,
                careDriveMin,
                note);
    }
}
