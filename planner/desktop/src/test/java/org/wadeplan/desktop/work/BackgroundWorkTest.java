package org.wadeplan.desktop.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BackgroundWorkTest {

    private final List<Runnable> waiting = new ArrayList<>();
    private final BackgroundWork work = new BackgroundWork(waiting::add, Runnable::run);
    private final List<String> heard = new ArrayList<>();

    private Job<String> job(String name, Job.Task<String> task) {
        return new Job<>(
                name, task, result -> heard.add("done " + result), fault -> heard.add("failed " + fault.getMessage()));
    }

    private void runAll() {
        List<Runnable> now = List.copyOf(waiting);
        waiting.clear();
        now.forEach(Runnable::run);
    }

    @Test
    void aJobIsBusyUntilItsResultIsThere() {
        work.run(job("reading", progress -> "round"));
        assertThat(work.busyProperty().get()).isTrue();
        assertThat(work.stepProperty().get()).isEqualTo("reading");
        runAll();
        assertThat(work.busyProperty().get()).isFalse();
        assertThat(heard).containsExactly("done round");
    }

    @Test
    void progressIsShownWithTheNameOfTheJob() {
        List<String> steps = new ArrayList<>();
        work.run(job("planning", progress -> {
            progress.at("the week", 0.4);
            steps.add(work.stepProperty().get() + " " + work.shareProperty().get());
            return "plan";
        }));
        runAll();
        assertThat(steps).containsExactly("planning: the week 0.4");
    }

    @Test
    void aNewerJobReplacesAnOlderOne() {
        work.run(job("first", progress -> "old"));
        work.run(job("second", progress -> "new"));
        runAll();
        assertThat(heard).containsExactly("done new");
    }

    @Test
    void aStoppedJobLearnsOfItAndItsResultIsThrownAway() {
        List<Boolean> told = new ArrayList<>();
        work.run(job("planning", progress -> {
            told.add(progress.cancelled());
            return "plan";
        }));
        work.cancel();
        runAll();
        assertThat(told).containsExactly(true);
        assertThat(heard).isEmpty();
    }

    @Test
    void whatAJobThrowsIsHandedOn() {
        work.run(job("writing", progress -> {
            throw new IOException("disk full");
        }));
        runAll();
        assertThat(heard).containsExactly("failed disk full");
        assertThat(work.busyProperty().get()).isFalse();
    }

    @Test
    void evenALinkageErrorEndsTheJob() {
        work.run(job("reading", progress -> {
            throw new NoClassDefFoundError("some/Missing");
        }));
        runAll();
        assertThat(work.busyProperty().get()).isFalse();
        assertThat(heard).singleElement().asString().contains("some/Missing");
    }
}
