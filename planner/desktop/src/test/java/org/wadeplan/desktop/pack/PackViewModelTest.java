package org.wadeplan.desktop.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;

class PackViewModelTest {

    private final StubDesk desk = new StubDesk();
    private final SessionModel session = new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run));
    private final PackViewModel pack = new PackViewModel(session, Path.of("/home/somebody"));

    @BeforeEach
    void open() {
        session.open(InventedWeek.FOLDER);
    }

    @Test
    void beforeWritingItSaysWhatWillBeWrittenAndWhere() {
        assertThat(pack.folderProperty().get()).isEqualTo("/home/somebody/wadeplan-packs/ilvermoor-2027");
        assertThat(pack.linesProperty().get())
                .extracting(PackLine::file)
                .containsExactly(
                        "Overview of the round",
                        "Mon 6 Sep, crew A",
                        "Mon 6 Sep, crew B",
                        "Tue 7 Sep, crew A",
                        "Tracks and calendar");
        assertThat(pack.warning()).startsWith("The plan stands with 1 error and 2 warnings.");
    }

    @Test
    void afterWritingItListsTheFilesWithTheirPages() {
        pack.write();
        assertThat(desk.asked).last().isEqualTo("print ilvermoor-2027");
        assertThat(pack.resultProperty().get())
                .isEqualTo("Wrote 2 files, 21 pages to print, to /home/somebody/wadeplan-packs/ilvermoor-2027");
        assertThat(pack.linesProperty().get())
                .containsExactly(
                        new PackLine("round_overview.pdf", "the week", "2", "51 kB", "written"),
                        new PackLine("2027-09-06_A.pdf", "papers of crew A", "19", "90 kB", "written"));
    }

    @Test
    void aDiskThatRefusesIsSaidInPlainWords() {
        desk.diskFull = true;
        pack.write();
        assertThat(pack.resultProperty().get()).contains("the disk is full").contains("Do: choose another folder");
    }

    @Test
    void nothingIsEverWrittenIntoTheRoundFolder() {
        pack.folderProperty().set(InventedWeek.FOLDER.resolve("pack").toString());
        pack.write();
        assertThat(pack.resultProperty().get()).startsWith("Not written:").contains("lies in the round folder");
        assertThat(desk.asked).noneMatch(asked -> asked.startsWith("print"));
    }

    @Test
    void withoutAFolderItAsksForOne() {
        pack.folderProperty().set("  ");
        pack.write();
        assertThat(pack.resultProperty().get()).isEqualTo("Choose a folder to write to.");
    }

    @Test
    void withoutAPlanThereIsNothingToPrint() {
        session.open(Path.of("broken"));
        assertThat(pack.readyProperty().get()).isFalse();
        assertThat(pack.warning()).startsWith("There is nothing to print: 1 error in the way of a plan.");
        pack.write();
        assertThat(desk.asked).noneMatch(asked -> asked.startsWith("print"));
    }
}
