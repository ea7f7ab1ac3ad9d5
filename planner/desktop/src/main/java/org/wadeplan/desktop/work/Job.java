package org.wadeplan.desktop.work;

import java.util.function.Consumer;

/**
 * A piece of long work and what becomes of its result.
 *
 * @param what what is being done, for the bar at the bottom
 * @param task runs away from the window's thread
 * @param done gets the result on the window's thread; not called where the work was stopped
 * @param failed gets what the task threw, on the window's thread; not called where the work was stopped
 */
public record Job<T>(String what, Task<T> task, Consumer<T> done, Consumer<Exception> failed) {

    /** The work itself. */
    @FunctionalInterface
    public interface Task<T> {
        T run(WorkProgress progress) throws Exception;
    }
}
