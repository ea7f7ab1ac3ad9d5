package org.wadeplan.planner.week;

import java.util.List;

/**
 * The windows of one part of a visit on one date.
 *
 * @param fitting long enough for the part, in order of time
 * @param tooShort open, but shorter than the part
 * @param reasons why windows are missing or too short, each in a sentence
 */
public record WindowSearch(List<TimeWindow> fitting, List<TimeWindow> tooShort, List<String> reasons) {

    static WindowSearch none(List<String> reasons) {
        return new WindowSearch(List.of(), List.of(), reasons);
    }
}
