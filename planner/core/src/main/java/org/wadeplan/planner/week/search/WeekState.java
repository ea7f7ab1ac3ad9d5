package org.wadeplan.planner.week.search;

/** Which stops stand in which slot in which order, and what each crew does about dirty kit at the end of its day. */
// Arrays because the inner loop of the search reads them millions of times; nobody compares these records.
@SuppressWarnings("ArrayRecordComponent")
record WeekState(int[][] stops, int[] decon) {

    /** Treat own sets, then those put aside by others as far as the shift allows. */
    static final int TREAT_ALL = 0;
    /** Treat own sets only. */
    static final int TREAT_OWN = 1;
    /** Put own sets aside, marked dirty, for a later crew-day. */
    static final int PUT_ASIDE = 2;

    static WeekState empty(int slots) {
        return new WeekState(new int[slots][0], new int[slots]);
    }

    WeekState copy() {
        return new WeekState(stops.clone(), decon.clone());
    }

    void insert(int slot, int position, int stop) {
        int[] old = stops[slot];
        int[] grown = new int[old.length + 1];
        System.arraycopy(old, 0, grown, 0, position);
        grown[position] = stop;
        System.arraycopy(old, position, grown, position + 1, old.length - position);
        stops[slot] = grown;
    }

    void remove(int slot, int position) {
        int[] old = stops[slot];
        int[] shrunk = new int[old.length - 1];
        System.arraycopy(old, 0, shrunk, 0, position);
        System.arraycopy(old, position + 1, shrunk, position, shrunk.length - position);
        stops[slot] = shrunk;
    }
}
