package org.wadeplan.geo.search;

/** Hears how far a search is and says when to stop it. */
public interface SearchWatch {

    /** Hears nothing and never stops. */
    SearchWatch NONE = new SearchWatch() {
        @Override
        public void report(String step, int done, int of) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    void report(String step, int done, int of);

    boolean cancelled();
}
