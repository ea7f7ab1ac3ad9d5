package org.wadeplan.desktop.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.desktop.session.LoadLineKey;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** What the store itself says against loading a thing on a day. */
final class LoadObstacles {

    private LoadObstacles() {}

    static List<String> of(Round round, LoadLineKey line) {
        List<String> against = new ArrayList<>();
        item(round, line.item()).ifPresent(item -> {
            state(item.state()).ifPresent(against::add);
            item.expires().filter(line.date()::isAfter).ifPresent(last -> against.add(Words.of("kit.expired", last)));
            item.certificates().stream()
                    .filter(certificate -> !certificate.validOn(line.date()))
                    .map(certificate -> notValid(certificate, line.date()))
                    .forEach(against::add);
        });
        round.store().kitSet(line.item()).flatMap(set -> state(set.state())).ifPresent(against::add);
        return List.copyOf(against);
    }

    private static Optional<StoreItem> item(Round round, String id) {
        return round.store().items().stream()
                .filter(item -> item.id().equals(id))
                .findFirst();
    }

    private static Optional<String> state(StoreState state) {
        return state == StoreState.CLEAN_DRY
                ? Optional.empty()
                : Optional.of(Words.of("kit.isNot", Words.of("store." + state.name())));
    }

    private static String notValid(ItemCertificate certificate, LocalDate date) {
        return Words.of("kit.notValid", certificate.certificate(), date, certificate.validUntil());
    }
}
