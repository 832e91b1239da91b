package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.workbook.graft.OutputException.Reason;
import org.rickyard.workbook.graft.SafeReplacement.Outcome;

class SafeReplacementTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void writeABook() throws IOException {
        book = Files.writeString(folder.resolve("client.xlsx"), "first");
    }

    /** Files of ours are told by their content here. */
    private static boolean ours(Path file) {
        try {
            return Files.readString(file).startsWith("ours");
        } catch (IOException unreadable) {
            return false;
        }
    }

    private Outcome replace(String content) throws IOException {
        try (SafeReplacement replacement = SafeReplacement.begin(book)) {
            Files.writeString(replacement.temporary(), content);
            return replacement.commit(SafeReplacementTest::ours);
        }
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theNewFileTakesThePlaceAndTheFormerIsKept() throws IOException {
        Outcome outcome = replace("ours 1");
        assertThat(outcome)
                .isEqualTo(new Outcome(true, Optional.of(book.toRealPath().resolveSibling("client.before.xlsx"))));
        assertThat(book).hasContent("ours 1");
        assertThat(folder.resolve("client.before.xlsx")).hasContent("first");
        assertThat(files()).containsExactly("client.before.xlsx", "client.xlsx");
    }

    @Test
    void anOriginalIsNeverOverwrittenByALaterRun() throws IOException {
        replace("ours 1");
        replace("ours 2");
        replace("ours 3");
        assertThat(folder.resolve("client.before.xlsx")).hasContent("first");
        assertThat(folder.resolve("client.before-2.xlsx")).hasContent("ours 2");
        assertThat(book).hasContent("ours 3");
        assertThat(files()).containsExactly("client.before-2.xlsx", "client.before.xlsx", "client.xlsx");
    }

    /** It would lead to the new file as soon as that has the name, and the original would be nowhere. */
    @Test
    void aLinkUnderTheNameOfTheFormerFileKeepsNothing() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("client.before.xlsx"), book.getFileName());
        replace("ours 1");
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(folder.resolve("client.before-2.xlsx")).hasContent("first");
        assertThat(book).hasContent("ours 1");
    }

    @Test
    void nothingIsWrittenWhenNothingWouldChange() throws IOException {
        var before = Files.getLastModifiedTime(book);
        assertThat(replace("first")).isEqualTo(new Outcome(false, Optional.empty()));
        assertThat(Files.getLastModifiedTime(book)).isEqualTo(before);
        assertThat(files()).containsExactly("client.xlsx");
    }

    @Test
    void aNewFileIsWrittenWithoutAFormerOne() throws IOException {
        Path fresh = folder.resolve("fresh.xlsx");
        try (SafeReplacement replacement = SafeReplacement.begin(fresh)) {
            Files.writeString(replacement.temporary(), "new");
            assertThat(replacement.commitWithoutFormer()).isEqualTo(new Outcome(true, Optional.empty()));
        }
        assertThat(fresh).hasContent("new");
        assertThat(files()).containsExactly("client.xlsx", "fresh.xlsx");
    }

    @Test
    void withoutACommitTheOriginalIsWholeAndNothingIsLeft() throws IOException {
        try (SafeReplacement replacement = SafeReplacement.begin(book)) {
            Files.writeString(replacement.temporary(), "half");
        }
        assertThat(book).hasContent("first");
        assertThat(files()).containsExactly("client.xlsx");
    }

    @Test
    void whatAKilledRunLeftIsRemoved() throws IOException {
        Files.writeString(folder.resolve(".rickyard-client.xlsx.tmp"), "left over");
        Files.writeString(folder.resolve(".rickyard-client.xlsx.former"), "left over");
        Files.writeString(folder.resolve(".rickyard-client.xlsx.lock"), "");
        replace("ours 1");
        assertThat(files()).containsExactly("client.before.xlsx", "client.xlsx");
    }

    @Test
    void aFileThatASpreadsheetProgramHoldsIsRefused() throws IOException {
        for (String mark : List.of("~$client.xlsx", ".~lock.client.xlsx#")) {
            Path held = Files.createFile(folder.resolve(mark));
            OutputException refused = catchThrowableOfType(
                    OutputException.class, () -> SafeReplacement.begin(book).close());
            assertThat(refused.reason()).isEqualTo(Reason.HELD);
            assertThat(refused).hasMessageContaining("client.xlsx").hasMessageContaining("Close it there");
            Files.delete(held);
        }
        assertThat(files()).containsExactly("client.xlsx");
    }

    @Test
    void aFileOpenedInASpreadsheetProgramMeanwhileIsRefused() throws IOException {
        try (SafeReplacement replacement = SafeReplacement.begin(book)) {
            Files.writeString(replacement.temporary(), "ours 1");
            Files.createFile(folder.resolve("~$client.xlsx"));
            assertThatThrownBy(() -> replacement.commit(SafeReplacementTest::ours))
                    .isInstanceOf(OutputException.class)
                    .hasMessageContaining("has it open");
        }
        assertThat(book).hasContent("first");
        assertThat(files()).containsExactly("client.xlsx", "~$client.xlsx");
    }

    @Test
    void aFileChangedMeanwhileIsRefusedEvenIfItsTimeIsTheSame() throws IOException {
        var time = Files.getLastModifiedTime(book);
        try (SafeReplacement replacement = SafeReplacement.begin(book)) {
            Files.writeString(replacement.temporary(), "ours 1");
            Files.writeString(book, "FIRST");
            Files.setLastModifiedTime(book, time);
            OutputException refused =
                    catchThrowableOfType(OutputException.class, () -> replacement.commit(SafeReplacementTest::ours));
            assertThat(refused.reason()).isEqualTo(Reason.CHANGED_MEANWHILE);
        }
        assertThat(book).hasContent("FIRST");
        assertThat(files()).containsExactly("client.xlsx");
    }

    @Test
    void aSecondRunOnTheSameFileIsRefused() throws IOException {
        try (SafeReplacement first = SafeReplacement.begin(book)) {
            Files.writeString(first.temporary(), "ours 1");
            OutputException refused = catchThrowableOfType(
                    OutputException.class, () -> SafeReplacement.begin(book).close());
            assertThat(refused.reason()).isEqualTo(Reason.ALREADY_RUNNING);
            assertThat(first.commit(SafeReplacementTest::ours).written()).isTrue();
        }
        assertThat(replace("ours 2").written()).isTrue();
    }

    @Test
    void aLinkStaysALinkAndTheFileItLeadsToIsReplaced() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path link = elsewhere.resolve("link.xlsx");
        Files.createSymbolicLink(link, book);
        try (SafeReplacement replacement = SafeReplacement.begin(link)) {
            Files.writeString(replacement.temporary(), "ours 1");
            replacement.commit(SafeReplacementTest::ours);
        }
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(book).hasContent("ours 1");
        assertThat(folder.resolve("client.before.xlsx")).hasContent("first");
    }

    @Test
    void theModeOfTheFileStays() throws IOException {
        assumeTrue(Files.getFileStore(book).supportsFileAttributeView("posix"), "no modes on this file system");
        Files.setPosixFilePermissions(book, PosixFilePermissions.fromString("rw-r-----"));
        replace("ours 1");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(book)))
                .isEqualTo("rw-r-----");
    }

    @Test
    void aFormerFileThatCannotBeKeptLeavesTheOriginalInPlace() throws IOException {
        try (SafeReplacement replacement = SafeReplacement.begin(book)) {
            Files.writeString(replacement.temporary(), "ours 1");
            Files.createDirectory(folder.resolve(".rickyard-client.xlsx.former"));
            Files.createFile(folder.resolve(".rickyard-client.xlsx.former/in-the-way"));
            assertThatThrownBy(() -> replacement.commit(SafeReplacementTest::ours))
                    .isInstanceOf(OutputException.class)
                    .hasMessageContaining("\"client.xlsx\" was not written");
        }
        assertThat(book).hasContent("first");
        assertThat(folder.resolve("client.before.xlsx")).doesNotExist();
        assertThat(folder.resolve(".rickyard-client.xlsx.tmp")).doesNotExist();
    }

    @Test
    void failuresOfTheDiskAreSaidInWords() {
        assertThat(OutputException.of(book, new FileSystemException("a", null, "No space left on device")))
                .hasMessage("\"client.xlsx\" was not written: there is no room left on the disk."
                        + " Free some space and run again.");
        assertThat(OutputException.of(book, new IOException("No space left on device"))
                        .reason())
                .isEqualTo(Reason.DISK_FULL);
        assertThat(OutputException.of(book, new FileSystemException("a", null, "Operation not permitted"))
                        .reason())
                .isEqualTo(Reason.NO_PERMISSION);
        assertThat(OutputException.of(book, new AccessDeniedException("a")).reason())
                .isEqualTo(Reason.NO_PERMISSION);
        assertThat(OutputException.of(book, new FileSystemException("a", null, "Read-only file system"))
                        .reason())
                .isEqualTo(Reason.READ_ONLY);
        assertThat(OutputException.of(book, new IOException("odd"))).hasMessageContaining("(odd)");
    }

    @Test
    void formerFilesAreNamedBeforeTheEnding() {
        assertThat(KeptFormer.name("client.xlsx", 1)).isEqualTo("client.before.xlsx");
        assertThat(KeptFormer.name("a.b.xlsm", 2)).isEqualTo("a.b.before-2.xlsm");
        assertThat(KeptFormer.name("client", 1)).isEqualTo("client.before");
    }

    /** Run by an administrator, a device would be replaced for everybody. */
    @Test
    void aPipeIsNotReplacedByAFile() throws Exception {
        Path pipe = folder.resolve("pipe.xlsx");
        boolean made;
        try {
            made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
        } catch (IOException notHere) {
            made = false;
        }
        assumeTrue(made, "named pipes cannot be made here");

        assertThatThrownBy(() -> SafeReplacement.begin(pipe).close())
                .isInstanceOf(OutputException.class)
                .hasMessage("\"pipe.xlsx\" was not written: it is a pipe or a device and no file, so no file may take"
                        + " its place. Write to another file.");
        assertThat(Files.readAttributes(pipe, BasicFileAttributes.class).isOther())
                .isTrue();
        assertThat(files()).containsExactly("client.xlsx", "pipe.xlsx");
    }
}
