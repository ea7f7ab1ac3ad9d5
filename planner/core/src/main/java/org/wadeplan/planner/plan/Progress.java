package org.wadeplan.planner.plan;

/** How long work tells how far it has come, and learns that nobody wants it any more. */
public interface Progress {

    /** Nobody watches, nobody cancels. */
    Progress SILENT = new Progress() {
        @Override
        public void at(String step, double share) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /**
     * Called now and then.
     *
     * @param step what is being done, in a word or two
     * @param share 0 at the start, 1 at the end
     */
    void at(String step, double share);

    /** Once true, work stops at the next good moment with the best result so far. */
    boolean cancelled();
}
