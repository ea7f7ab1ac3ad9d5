package org.wadeplan.planner.decon.record;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.Round;

/** What stands against the bath that a set lay in, whatever row it is held against. */
final class BathFaults {

    private final Round round;
    private final ClockWords clock;

    BathFaults(Round round) {
        this.round = round;
        this.clock = new ClockWords(round.header().zone());
    }

    Optional<BathRecord> bath(CleaningRecord record) {
        return record.bath().flatMap(id -> round.log().baths().stream()
                .filter(bath -> bath.id().equals(id))
                .findFirst());
    }

    List<String> of(CleaningRecord record) {
        List<String> faults = new ArrayList<>();
        Optional<BathRecord> bath = bath(record);
        if (record.bath().isPresent() && bath.isEmpty()) {
            faults.add("bath " + record.bath().get() + " is not on file");
        }
        bath.ifPresent(one -> {
            made(record, one).ifPresent(faults::add);
            gone(record, one).ifPresent(faults::add);
        });
        return faults;
    }

    private Optional<String> made(CleaningRecord record, BathRecord bath) {
        if (bath.madeAt().isAfter(record.startedAt())) {
            return Optional.of("bath " + bath.id() + " was made only at " + clock.at(bath.madeAt()) + ", after "
                    + clock.at(record.startedAt()));
        }
        boolean expired = !BathAge.expires(round, bath).isAfter(record.startedAt());
        long days = Duration.between(bath.madeAt(), record.startedAt()).toDays();
        return expired
                ? Optional.of("bath " + bath.id() + " was made " + (days == 0 ? "the day before" : days + " d before")
                        + " and was no longer to be used after "
                        + clock.at(BathAge.expires(round, bath))
                        + ": a used bath ends with its day, an unused closed one after 7 d")
                : Optional.empty();
    }

    private Optional<String> gone(CleaningRecord record, BathRecord bath) {
        return bath.discardedAt()
                .filter(gone -> gone.isBefore(record.endedAt()))
                .map(gone -> "bath " + bath.id() + " was tipped out at " + clock.at(gone)
                        + ", before the set came out at " + clock.at(record.endedAt()));
    }

    /** Where the agent in the tub is not the treatment's. */
    Optional<String> otherAgent(CleaningRecord record, String agent) {
        return bath(record)
                .filter(bath -> !bath.agent().equalsIgnoreCase(agent))
                .map(bath ->
                        "bath " + bath.id() + " held " + bath.agent() + ", and " + record.treatment() + " is " + agent);
    }
}
