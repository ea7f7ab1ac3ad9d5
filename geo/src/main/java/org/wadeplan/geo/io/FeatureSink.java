package org.wadeplan.geo.io;

/** Takes the features of one layer as they are read. */
interface FeatureSink {

    /**
     * Called once, before the first feature.
     *
     * @return whether to go on; where it says no, no feature is read
     */
    boolean begins(LayerShape shape);

    void take(Feature feature);
}
