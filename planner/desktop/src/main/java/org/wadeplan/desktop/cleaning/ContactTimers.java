package org.wadeplan.desktop.cleaning;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;

/**
 * The contact times that run. Time that has passed cannot be undone, so they stand outside undo and outlive reading the
 * folder again; only stopping one, or closing the window, ends it.
 */
public final class ContactTimers {

    private final SessionModel model;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<List<ContactTimer>> running = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Instant> now;
    private final Set<String> told = new TreeSet<>();

    ContactTimers(SessionModel model, Clock clock) {
        this.model = model;
        this.clock = clock;
        this.now = new ReadOnlyObjectWrapper<>(clock.instant());
    }

    public ReadOnlyObjectProperty<List<ContactTimer>> runningProperty() {
        return running.getReadOnlyProperty();
    }

    /** The time of the last beat. */
    public ReadOnlyObjectProperty<Instant> nowProperty() {
        return now.getReadOnlyProperty();
    }

    /** Called every second or so by whoever shows the timers. */
    public void beat() {
        now.set(clock.instant());
        for (ContactTimer timer : running.get()) {
            if (timer.due(now.get()) && told.add(timer.stepId())) {
                model.say(Words.of("timer.dueSaid", timer.kitSet(), timer.step()));
            }
        }
    }

    Optional<ContactTimer> of(String stepId) {
        return running.get().stream()
                .filter(timer -> timer.stepId().equals(stepId))
                .findFirst();
    }

    /** Starts the contact time of a step now; one that runs already goes on. */
    void start(String kitSet, StepRow step) {
        if (of(step.id()).isEmpty()) {
            step.contactMin().ifPresent(minutes -> {
                beat();
                told.remove(step.id());
                ContactTimer timer = new ContactTimer(step.id(), kitSet, step.step(), minutes, clock.instant());
                running.set(
                        Stream.concat(running.get().stream(), Stream.of(timer)).toList());
            });
        }
    }

    /** Ends one, and says whether its contact time was reached. */
    public void stop(ContactTimer timer) {
        beat();
        running.set(running.get().stream().filter(other -> !other.equals(timer)).toList());
        int doneMin = timer.contactMin() - Math.toIntExact((timer.leftS(now.get()) + 59) / 60);
        model.say(
                timer.due(now.get())
                        ? Words.of("timer.stoppedDone", timer.kitSet(), Times.minutes(timer.contactMin()))
                        : Words.of(
                                "timer.stoppedEarly",
                                timer.kitSet(),
                                Times.minutes(doneMin),
                                Times.minutes(timer.contactMin())));
    }
}
