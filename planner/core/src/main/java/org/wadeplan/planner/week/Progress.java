package org.wadeplan.planner.week;

/** Hears how long work goes and says when to stop. Cancelled work ends with the best that it has. */
public interface Progress {

    /** Hears nothing and never stops. */
    Progress NONE = new Progress() {
        @Override
        public void report(int done, int of, String words) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    void report(int done, int of, String words);

    boolean cancelled();
}
