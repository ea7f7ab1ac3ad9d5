package org.wadeplan.planner.reach;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.wadeplan.geo.access.Land;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Consent.ConsentStatus;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** The round's parcels with whether there is consent to be on them. */
final class RoundLand {

    private static final Set<String> CONSENTED = Set.of("yes", "conditional");

    private RoundLand() {}

    /**
     * Consent must stand on the map, and no site's own consent may say otherwise: what is pending, refused or not known is
     * none.
     */
    static List<Land> of(Round round) {
        Set<String> withheldSites = round.consents().stream()
                .filter(consent ->
                        consent.status() == ConsentStatus.REFUSED || consent.status() == ConsentStatus.PENDING)
                .map(Consent::site)
                .collect(Collectors.toSet());
        Set<String> withheld = round.sites().stream()
                .filter(site -> withheldSites.contains(site.id()))
                .map(Site::parcel)
                .flatMap(parcel -> parcel.stream())
                .collect(Collectors.toSet());
        return round.terrain().parcels().stream()
                .map(parcel ->
                        new Land(parcel.id(), isConsented(parcel) && !withheld.contains(parcel.id()), parcel.area()))
                .toList();
    }

    private static boolean isConsented(Parcel parcel) {
        return parcel.consentStatus()
                .map(status -> CONSENTED.contains(status.strip().toLowerCase(Locale.ROOT)))
                .orElse(false);
    }
}
