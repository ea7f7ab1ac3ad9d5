package org.wadeplan.desktop.work;

import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * Runs one job at a time. A newer job replaces one that still runs: the older result is thrown away. Its methods and
 * properties belong to the window's thread.
 */
public final class BackgroundWork {

    private final Executor background;
    private final Executor window;
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(false);
    private final ReadOnlyStringWrapper step = new ReadOnlyStringWrapper("");
    private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(0);
    private Optional<Ticket> running = Optional.empty();

    /**
     * Work that runs where it is told to.
     *
     * @param background where jobs run
     * @param window brings results back; tests give both a same-thread executor
     */
    public BackgroundWork(Executor background, Executor window) {
        this.background = background;
        this.window = window;
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** What is being done now, in words; empty while idle. */
    public ReadOnlyStringProperty stepProperty() {
        return step.getReadOnlyProperty();
    }

    /** 0 at the start, 1 at the end. */
    public ReadOnlyDoubleProperty shareProperty() {
        return share.getReadOnlyProperty();
    }

    public <T> void run(Job<T> job) {
        running.ifPresent(Ticket::cancel);
        Ticket ticket = new Ticket(job.what());
        running = Optional.of(ticket);
        busy.set(true);
        step.set(job.what());
        share.set(0);
        background.execute(() -> perform(job, ticket));
    }

    /** Asks the running job to stop, and throws its result away. */
    public void cancel() {
        running.ifPresent(Ticket::cancel);
        idle();
    }

    private <T> void perform(Job<T> job, Ticket ticket) {
        try {
            T result = job.task().run(ticket);
            finish(ticket, () -> job.done().accept(result));
        } catch (Exception failure) {
            finish(ticket, () -> job.failed().accept(failure));
        } catch (LinkageError | ServiceConfigurationError | OutOfMemoryError | StackOverflowError fault) {
            // A worker is a top-level handler: without this the window would wait for ever.
            finish(ticket, () -> job.failed().accept(new ExecutionException(fault)));
        }
    }

    private void finish(Ticket ticket, Runnable then) {
        window.execute(() -> {
            if (ticket.cancelled()) {
                return;
            }
            idle();
            then.run();
        });
    }

    private void idle() {
        running = Optional.empty();
        busy.set(false);
        step.set("");
        share.set(0);
    }

    private final class Ticket implements WorkProgress {

        private final String what;
        private volatile boolean stop;

        Ticket(String what) {
            this.what = what;
        }

        void cancel() {
            stop = true;
        }

        @Override
        public void at(String now, double portion) {
            window.execute(() -> {
                if (running.filter(ticket -> ticket == this).isPresent()) {
                    step.set(what + ": " + now);
                    share.set(portion);
                }
            });
        }

        @Override
        public boolean cancelled() {
            return stop;
        }
    }
}
