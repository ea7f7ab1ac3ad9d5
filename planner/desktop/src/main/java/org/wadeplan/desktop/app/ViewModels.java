package org.wadeplan.desktop.app;

import java.nio.file.Path;
import java.time.Clock;
import org.wadeplan.desktop.cleaning.CleaningViewModel;
import org.wadeplan.desktop.kit.KitViewModel;
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
        KitViewModel kit,
        CleaningViewModel cleaning,
        TextSize text) {

    /**
     * View models for one window.
     *
     * @param home folder in which packs are offered to be written
     * @param clock the time of ticks and timers
     */
    public static ViewModels of(SessionModel session, Path home, Clock clock) {
        MapViewModel map = new MapViewModel(session);
        return new ViewModels(
                session,
                map,
                new CandidateViewModel(session, map),
                new WeekViewModel(session),
                new ProblemsViewModel(session),
                new PackViewModel(session, home),
                new KitViewModel(session, clock),
                new CleaningViewModel(session, clock),
                new TextSize());
    }
}
