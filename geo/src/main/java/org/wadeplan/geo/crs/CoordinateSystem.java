package org.wadeplan.geo.crs;

/** Skeleton so that others compile; the geo branch replaces it. */
public interface CoordinateSystem {

    String code();

    String words();

    LonLat toLonLat(MetricPoint point);

    MetricPoint toMetric(LonLat point);
}
