package org.wadeplan.planner.files;

import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Consent.ConsentStatus;

/** {@code consents.csv}: what the holders of the land said. */
final class ConsentTable {

    static final TableKind<Consent> KIND = TableKind.named("consents", "consent")
            .required("consent site status")
            .optional("valid_until access_from access_until night_access gate_note gate_lon_deg " + "gate_lat_deg")
            .makes(ConsentTable::consent);

    private static final Words<ConsentStatus> STATUSES = Words.of(ConsentStatus.class);

    private ConsentTable() {}

    private static Consent consent(Row row) {
        Consent consent = new Consent(
                row.text("consent"),
                row.text("site"),
                row.word("status", STATUSES),
                row.optionalDate("valid_until"),
                row.optionalTime("access_from"),
                row.optionalTime("access_until"),
                row.optionalFlag("night_access"),
                row.optionalText("gate_note"),
                Points.optionalLonLat(row, "gate_lon_deg", "gate_lat_deg"));
        Spans.check(row, "access_from", consent.accessFrom(), "access_until", consent.accessUntil());
        return consent;
    }
}
