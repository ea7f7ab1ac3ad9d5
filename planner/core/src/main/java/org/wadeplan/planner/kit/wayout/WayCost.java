package org.wadeplan.planner.kit.wayout;

/** What a way out costs, the cheapest first. The order is a decision of ours: a lost day is the dearest thing a round has. */
public enum WayCost {
    /** Another order of the day, another serial, sharing: nothing but agreement. */
    NONE("no cost"),
    /** Service, calibration, test, repair of what the agency owns. */
    WORKSHOP("workshop"),
    /** Something hired or borrowed. */
    HIRE("hire or borrow"),
    BUY("buy"),
    /** A day of the reserve, or a lost one. */
    RESERVE_DAY("reserve day");

    private final String words;

    WayCost(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
