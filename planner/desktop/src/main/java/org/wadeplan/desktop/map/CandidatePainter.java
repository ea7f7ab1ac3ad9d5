package org.wadeplan.desktop.map;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.desktop.look.Palette;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;

/**
 * The result of a search over the map: ruled-out stretches as a dotted band, candidates as a broad one with their name at
 * the start. The better the score, the broader the candidate's band and the fuller its colour.
 */
final class CandidatePainter {

    static final Color RULED_OUT = Color.web("#8a5a2b");

    private static final double NAMES_BELOW = 120;

    private final GraphicsContext pen;
    private final ViewBox view;
    private final MapLabels labels;

    CandidatePainter(GraphicsContext pen, ViewBox view, MapLabels labels) {
        this.pen = pen;
        this.view = view;
        this.labels = labels;
    }

    void paint(CandidateReport report, Optional<String> chosen) {
        pen.save();
        pen.setLineCap(StrokeLineCap.BUTT);
        pen.setLineDashes(3, 5);
        report.rejected().forEach(strip -> line(strip.line(), RULED_OUT, 6));
        pen.setLineDashes();
        report.candidates()
                .forEach(each ->
                        candidate(each, chosen.filter(each.name()::equals).isPresent()));
        pen.restore();
    }

    private void candidate(ProposedReach candidate, boolean chosen) {
        double share = candidate.score().points() / 100;
        line(candidate.reach().line(), Color.WHITE, 11 + 3 * share);
        line(
                candidate.reach().line(),
                chosen ? Palette.SELECTED : Palette.GOOD.interpolate(Palette.QUIET, 0.7 * (1 - share)),
                7 + 3 * share);
        Stake start = candidate.reach().start();
        double x = view.x(start.at().eastM());
        double y = view.y(start.at().northM());
        pen.setFill(chosen ? Palette.SELECTED : Palette.GOOD);
        pen.fillRect(x - 4, y - 4, 8, 8);
        if (chosen || view.metresPerPx() < NAMES_BELOW) {
            labels.candidate(candidate.name(), x, y, chosen);
        }
    }

    private void line(LineString shape, Color color, double widthPx) {
        if (!view.ground().intersects(shape.getEnvelopeInternal())) {
            return;
        }
        CoordinateSequence vertices = shape.getCoordinateSequence();
        double[] x = new double[vertices.size()];
        double[] y = new double[vertices.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = view.x(vertices.getX(i));
            y[i] = view.y(vertices.getY(i));
        }
        pen.setStroke(color);
        pen.setLineWidth(widthPx);
        pen.strokePolyline(x, y, x.length);
    }
}
