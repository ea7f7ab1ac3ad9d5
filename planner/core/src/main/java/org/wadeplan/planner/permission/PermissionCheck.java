package org.wadeplan.planner.permission;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/**
 * What permits and consents say of a site, a method and a day. It reports what is on file; it grants nothing.
 *
 * <p>Recording a dry site handles no fish, so it needs consent and no permit (common practice; an authority may see it
 * otherwise).
 */
public final class PermissionCheck {

    private PermissionCheck() {}

    /** Never fails: whatever is missing from the files is a block with its reason. */
    public static Permission of(Round round, Site site, String method, LocalDate date) {
        Findings findings = new Findings();
        Optional<Method> known = round.method(method);
        if (known.isEmpty() || known.get().kind() == MethodKind.NONE) {
            findings.blocks().add(method + " is not a method with a visit.");
        } else {
            if (known.get().kind() != MethodKind.DRY_RECORD) {
                findings.addAll(PermitCheck.of(round, site, method, date));
            }
            findings.addAll(ConsentCheck.of(round, site, known.get(), date));
        }
        List<Consent> consents = ConsentCheck.forSite(round, site);
        return new Permission(
                site.id(),
                method,
                date,
                List.copyOf(findings.blocks()),
                List.copyOf(findings.awaiting()),
                List.copyOf(findings.conditions()),
                latestFrom(consents),
                earliestUntil(consents));
    }

    /** True where somebody said yes to people on the land after dark, and nobody no. */
    public static boolean nightAccess(Round round, Site site) {
        return ConsentCheck.nightAccess(round, site);
    }

    private static Optional<LocalTime> latestFrom(List<Consent> consents) {
        return consents.stream()
                .map(Consent::accessFrom)
                .flatMap(Optional::stream)
                .max(Comparator.naturalOrder());
    }

    private static Optional<LocalTime> earliestUntil(List<Consent> consents) {
        return consents.stream()
                .map(Consent::accessUntil)
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder());
    }
}
