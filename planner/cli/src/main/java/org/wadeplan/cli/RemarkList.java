package org.wadeplan.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Long reasons listed once below a table, which names them by number. */
final class RemarkList {

    private final List<String> remarks = new ArrayList<>();

    /** The remark's number in brackets; the same text keeps its number. */
    String numberOf(String remark) {
        if (!remarks.contains(remark)) {
            remarks.add(remark);
        }
        return "[" + (remarks.indexOf(remark) + 1) + "]";
    }

    /** Every remark behind its number, in lines of a terminal's width. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String remark : remarks) {
            lines.addAll(TextTable.hanging(String.format(Locale.ROOT, "%-5s", numberOf(remark)), remark));
        }
        return lines;
    }
}
