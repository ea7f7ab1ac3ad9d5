package org.wadeplan.geo.network;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;

/** Skeleton so that others compile; the geo branch replaces it. */
public interface StreamNetwork {

    List<StreamLine> lines();

    Optional<StreamLine> line(String code);

    double chainageM(String code, MetricPoint point);

    double fromMouthM(String code, MetricPoint point);
}
