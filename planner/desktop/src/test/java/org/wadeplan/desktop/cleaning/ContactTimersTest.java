package org.wadeplan.desktop.cleaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;

class ContactTimersTest {

    /** A clock that a test puts forward. */
    private static final class Hand extends Clock {

        private Instant now = Instant.parse("2027-09-06T17:35:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }

        void forward(int seconds) {
            now = now.plusSeconds(seconds);
        }
    }

    private final Hand hand = new Hand();
    private final SessionModel session =
            new SessionModel(new StubDesk(), new BackgroundWork(Runnable::run, Runnable::run));
    private final ContactTimers timers = new ContactTimers(session, hand);
    private final StepRow soak =
            new StepRow("K1 soak", "17:35", "hot dip", "15 min", "bay", "50 °C", "", hand.instant(), Optional.of(15));

    private ContactTimer only() {
        return timers.runningProperty().get().get(0);
    }

    @Test
    void contactTimeCountsDownFromTheButton() {
        hand.forward(90);
        timers.start("K1", soak);
        assertThat(only().leftS(hand.instant())).isEqualTo(900);
        hand.forward(60);
        assertThat(only().leftS(hand.instant())).isEqualTo(840);
        assertThat(only().share(hand.instant())).isEqualTo(60 / 900.0);
        assertThat(only().dueAt()).isEqualTo(Instant.parse("2027-09-06T17:51:30Z"));
    }

    @Test
    void whenItIsOverItSaysSoOnceAndGoesOnUntilStopped() {
        timers.start("K1", soak);
        hand.forward(899);
        timers.beat();
        assertThat(session.noticeProperty().get()).isEmpty();
        hand.forward(1);
        timers.beat();
        assertThat(session.noticeProperty().get())
                .isEqualTo("Contact time is over: kit set K1, hot dip. The end reading is due.");
        session.say("something else");
        hand.forward(1);
        timers.beat();
        assertThat(session.noticeProperty().get()).isEqualTo("something else");
        assertThat(timers.runningProperty().get()).hasSize(1);
        timers.stop(only());
        assertThat(session.noticeProperty().get()).contains("was reached");
        assertThat(timers.runningProperty().get()).isEmpty();
    }

    @Test
    void stoppedEarlyItSaysHowLittleItWas() {
        timers.start("K1", soak);
        hand.forward(4 * 60 + 59);
        timers.stop(only());
        assertThat(session.noticeProperty().get())
                .isEqualTo("Kit set K1: stopped after 4 min of 15 min. The contact time was NOT reached.");
    }

    @Test
    void oneThatRunsIsNotStartedAgain() {
        timers.start("K1", soak);
        hand.forward(30);
        timers.start("K1", soak);
        assertThat(only().leftS(hand.instant())).isEqualTo(870);
    }

    @Test
    void aStepWithoutContactTimeHasNoTimer() {
        timers.start(
                "K1",
                new StepRow("K1 brush", "17:15", "brush", "20 min", "", "", "", hand.instant(), Optional.empty()));
        assertThat(timers.runningProperty().get()).isEmpty();
    }

    @Test
    void theEndIsCountedInWholeMinutesOfContact() {
        ContactTimer timer = new ContactTimer("x", "K1", "soak", 20, hand.instant());
        assertThat(timer.due(hand.instant().plus(Duration.ofMinutes(20)))).isTrue();
        assertThat(timer.due(hand.instant().plus(Duration.ofMinutes(20)).minusSeconds(1)))
                .isFalse();
    }
}
