package org.wadeplan.planner.kit.wayout;

/**
 * One way out of a shortage, tried.
 *
 * @param what what to do, in words
 * @param found what trying it on the week showed, in words
 */
public record WayOut(WayCost cost, String what, Result result, String found) {

    /** What came of trying it. */
    public enum Result {
        /** The shortage is gone and nothing else got worse. */
        OPEN,
        /** Less is short than before, and nothing else got worse. */
        PARTLY,
        /** The shortage stays, or something else breaks: {@code found} says what. */
        REFUSED
    }
}
