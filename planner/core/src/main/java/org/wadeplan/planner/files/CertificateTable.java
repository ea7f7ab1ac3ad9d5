package org.wadeplan.planner.files;

import java.util.Optional;
import org.wadeplan.planner.round.ItemCertificate;

/** {@code certificates.csv}: services, tests, calibrations and inspections of items. */
final class CertificateTable {

    static final TableKind<CertificateTable.CertificateOf> KIND = TableKind.named("certificates", "item certificate")
            .required("item certificate valid_until")
            .optional("valid_from note")
            .makes(CertificateTable::CertificateOf);

    private CertificateTable() {}

    private static CertificateTable.CertificateOf CertificateOf(Row row) {
        CertificateOf of = new CertificateOf(
                row.text("item"),
                new ItemCertificate(
                        row.text("certificate"),
                        row.optionalDate("valid_from"),
                        row.date("valid_until"),
                        row.optionalText("note")));
        Spans.check(
                row,
                "valid_from",
                of.certificate().validFrom(),
                "valid_until",
                Optional.of(of.certificate().validUntil()));
        return of;
    }

    /** A certificate with the item that it is about. */
    record CertificateOf(String item, ItemCertificate certificate) {}
}
