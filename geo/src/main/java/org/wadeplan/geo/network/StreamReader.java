package org.wadeplan.geo.network;

import java.util.Optional;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Makes the round's stream network of a map layer.
 *
 * <p>Nothing is repaired in silence. A suspected fault is an error that says which feature, what was found, what a repair
 * would assume and how to accept it. With the repair accepted it becomes a note. The network is there beside errors too,
 * with such lines as they are drawn, so that a map can show where the fault lies.
 */
public final class StreamReader {

    private final CoordinateSystem round;
    private final SourcePlace file;
    private final StreamHints hints;
    private final AcceptedRepairs accepted;
    private final StreamRules rules;

    /** A reader for one file by {@link StreamRules#USUAL}. */
    public StreamReader(CoordinateSystem round, SourcePlace file, StreamHints hints, AcceptedRepairs accepted) {
        this(round, file, hints, accepted, StreamRules.USUAL);
    }

    /**
     * A reader for one file.
     *
     * @param round the system to measure in
     * @param file how problems name the file
     * @param hints what the round knows of its streams
     * @param accepted the repairs that a person has agreed to
     * @param rules by what measures lines become a network
     */
    public StreamReader(
            CoordinateSystem round, SourcePlace file, StreamHints hints, AcceptedRepairs accepted, StreamRules rules) {
        this.round = round;
        this.file = file;
        this.hints = hints;
        this.accepted = accepted;
        this.rules = rules;
    }

    /** The network, with everything that is wrong or assumed. */
    public Checked<StreamNetwork> read(FeatureLayer layer) {
        Optional<StatedSystem> crs = layer.shape().crs();
        if (crs.isEmpty()) {
            return Checked.failed(Problem.error(
                    "crs-missing",
                    file,
                    "the layer does not say which coordinate system it is in",
                    "a system with an EPSG code, best the round's " + round.code(),
                    "set the layer's coordinate system in the map program and save it again"));
        }
        return round.from(crs.get(), file)
                .then(reprojection -> new StreamReading(round, file, hints, rules, new SuspectedFaults(accepted))
                        .read(layer, reprojection));
    }
}
