package org.wadeplan.desktop.work;

/** How a job tells how far it has come, and learns that nobody wants it any more. */
public interface WorkProgress {

    /**
     * Called now and then.
     *
     * @param step what is being done, in a word or two
     * @param share 0 where not known, 1 at the end
     */
    void at(String step, double share);

    /** Once true, the result is thrown away. */
    boolean cancelled();
}
