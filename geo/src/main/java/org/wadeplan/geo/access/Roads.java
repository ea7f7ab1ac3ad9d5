package org.wadeplan.geo.access;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.PackedSegmentIndex;
import org.wadeplan.geo.lines.SegmentIndex.Snap;

/**
 * Roads and tracks from which people walk to a stream. Whether one may be driven, and by whom, they do not say. Immutable; safe
 * to share between threads.
 */
public final class Roads {

    private final LineSet lines;
    private final List<String> kinds;
    private final PackedSegmentIndex index;

    /**
     * @param lines in the round's metric system; a line's id is what people call the road
     * @param kinds what each line is, in the file's word; blank where it does not say
     */
    public Roads(LineSet lines, List<String> kinds) {
        if (kinds.size() != lines.lineCount()) {
            throw new IllegalArgumentException(lines.lineCount() + " roads need as many kinds, not " + kinds.size());
        }
        this.lines = lines;
        this.kinds = List.copyOf(kinds);
        this.index = new PackedSegmentIndex(lines);
    }

    public LineSet lines() {
        return lines;
    }

    /** The file's word for what a line is; blank where it does not say. */
    public String kind(int line) {
        return kinds.get(line);
    }

    /** Where the nearest road passes; empty where none is that near. */
    public Optional<Snap> nearest(MetricPoint place, double withinM) {
        return index.nearest(place, 1, withinM).stream().findFirst();
    }

    PackedSegmentIndex index() {
        return index;
    }
}
