package org.wadeplan.geo.search;

import java.util.List;

/**
 * A stretch that holds no reach, with every reason.
 *
 * @param stretch where it is
 * @param reasons worst known first, in the order of {@link ReasonKind}
 */
public record RejectedStretch(LineStretch stretch, List<Reason> reasons) {

    public RejectedStretch {
        reasons = List.copyOf(reasons);
    }
}
