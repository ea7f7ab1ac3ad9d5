package org.wadeplan.planner.permission;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Light;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Reads every consent of a site: where land has several holders, each of them counts. */
final class ConsentCheck {

    private ConsentCheck() {}

    static Findings of(Round round, Site site, Method method, LocalDate date) {
        Findings findings = new Findings();
        List<Consent> consents = forSite(round, site);
        if (consents.isEmpty()) {
            findings.blocks().add("No consent row for " + site.id() + ": nobody has asked.");
        }
        consents.forEach(consent -> read(consent, date, findings));
        readParcel(round, site, findings);
        if (method.parts().stream().anyMatch(part -> part.light() == Light.DARK)) {
            readNight(site, consents, findings);
        }
        return findings;
    }

    static List<Consent> forSite(Round round, Site site) {
        return round.consents().stream()
                .filter(consent -> consent.site().equals(site.id()))
                .toList();
    }

    private static void read(Consent consent, LocalDate date, Findings findings) {
        String name = "Consent " + consent.id() + " for " + consent.site();
        switch (consent.status()) {
            case YES -> {}
            case CONDITIONAL -> {
                if (consent.gateNote().isEmpty()) {
                    findings.conditions().add(name + " is conditional and the condition is not on file: ask.");
                }
            }
            case PENDING -> findings.awaiting().add(name + " is pending.");
            case REFUSED -> findings.blocks().add(name + " was refused.");
        }
        if (consent.validUntil().filter(date::isAfter).isPresent()) {
            findings.blocks().add(name + " ended on " + consent.validUntil().get() + ".");
        }
        consent.gateNote().ifPresent(note -> findings.conditions().add(note));
    }

    private static void readParcel(Round round, Site site, Findings findings) {
        site.parcel()
                .flatMap(id -> round.terrain().parcels().stream()
                        .filter(parcel -> parcel.id().equals(id))
                        .findFirst())
                .filter(parcel -> parcel.consentStatus()
                        .filter(status -> status.equalsIgnoreCase("refused"))
                        .isPresent())
                .ifPresent(parcel -> findings.blocks()
                        .add("Parcel " + parcel.id() + ", on which " + site.id() + " lies, is marked refused."));
    }

    private static void readNight(Site site, List<Consent> consents, Findings findings) {
        if (nightRefused(site, consents)) {
            findings.blocks().add("No access to " + site.id() + " after dark.");
        } else if (!nightGranted(site, consents)) {
            findings.blocks().add("Nobody has asked about access to " + site.id() + " after dark.");
        }
    }

    /** Any no is a no. */
    private static boolean nightRefused(Site site, List<Consent> consents) {
        return site.nightAccess().filter(yes -> !yes).isPresent()
                || consents.stream()
                        .anyMatch(consent ->
                                consent.nightAccess().filter(yes -> !yes).isPresent());
    }

    /** Silence is not a yes. */
    private static boolean nightGranted(Site site, List<Consent> consents) {
        return site.nightAccess().orElse(false)
                || consents.stream()
                        .map(Consent::nightAccess)
                        .flatMap(Optional::stream)
                        .anyMatch(yes -> yes);
    }

    static boolean nightAccess(Round round, Site site) {
        List<Consent> consents = forSite(round, site);
        return nightGranted(site, consents) && !nightRefused(site, consents);
    }
}
