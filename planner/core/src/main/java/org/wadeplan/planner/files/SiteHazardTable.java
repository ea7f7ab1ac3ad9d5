package org.wadeplan.planner.files;

import org.wadeplan.planner.round.SiteHazard;

/** {@code site_hazards.csv}: what people noted about sites. */
final class SiteHazardTable {

    static final TableKind<SiteHazard> KIND = TableKind.named("site_hazards", "site")
            .required("site text new_since_last source")
            .optional("hazard sub_reach")
            .makes(SiteHazardTable::siteHazard);

    private SiteHazardTable() {}

    private static SiteHazard siteHazard(Row row) {
        return new SiteHazard(
                row.text("site"),
                row.optionalText("hazard"),
                row.text("text"),
                row.optionalText("sub_reach"),
                row.flag("new_since_last"),
                row.text("source"));
    }
}
