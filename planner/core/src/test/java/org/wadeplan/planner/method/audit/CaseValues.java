package org.wadeplan.planner.method.audit;

import java.math.BigDecimal;
import org.wadeplan.planner.method.CaseValue;

/** Reads back the values of a finding's example. */
final class CaseValues {

    private CaseValues() {}

    static CaseValue of(String cell) {
        if (cell.startsWith("\"")) {
            return CaseValue.of(cell.substring(1, cell.length() - 1));
        }
        return cell.equals("true") || cell.equals("false")
                ? CaseValue.of(Boolean.parseBoolean(cell))
                : new CaseValue.Quantity(new BigDecimal(cell));
    }
}
