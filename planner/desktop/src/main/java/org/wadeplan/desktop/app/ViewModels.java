package org.wadeplan.desktop.app;

import java.nio.file.Path;
import org.wadeplan.desktop.look.TextSize;
import org.wadeplan.desktop.map.CandidateViewModel;
import org.wadeplan.desktop.map.MapViewModel;
import org.wadeplan.desktop.pack.PackViewModel;
import org.wadeplan.desktop.problems.ProblemsViewModel;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.week.WeekViewModel;

/** Everything that decides, without anything that is drawn. */
public record ViewModels(
        SessionModel session,
        MapViewModel map,
        CandidateViewModel candidates,
        WeekViewModel week,
        ProblemsViewModel problems,
        PackViewModel pack,
        TextSize text) {

    /** View models for one window. */
    public static ViewModels of(SessionModel session, Path home) {
        MapViewModel map = new MapViewModel(session);
        return new ViewModels(
                session,
                map,
                new CandidateViewModel(session, map),
                new WeekViewModel(session),
                new ProblemsViewModel(session),
                new PackViewModel(session, home),
                new TextSize());
    }
}
