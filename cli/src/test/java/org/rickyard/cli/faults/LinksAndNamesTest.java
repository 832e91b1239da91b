package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.cli.Ran;
import org.rickyard.testing.Skips;
import org.rickyard.workbook.open.BookPackage;

/** Workbooks reached by symbolic links, and by names that trip up careless programs. */
class LinksAndNamesTest {
    @TempDir
    Path folder;

    private Path link(Path at, Path goal) throws IOException {
        Files.createDirectories(at.getParent());
        boolean made;
        try {
            Files.createSymbolicLink(at, goal);
            made = true;
        } catch (UnsupportedOperationException | IOException notHere) {
            made = false;
        }
        Skips.unless(made, "symbolic links cannot be made here");
        return at;
    }

    private void runsThrough(Path link, Farm farm) throws Exception {
        Path goal = Files.readSymbolicLink(link);
        Ran ran = Ran.rickyard("run", link);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("Wrote farm.xlsx.", "kept as farm.before.xlsx");
        assertThat(link).isSymbolicLink();
        assertThat(Files.readSymbolicLink(link)).isEqualTo(goal);
        assertThat(Files.readAllBytes(farm.book())).isNotEqualTo(farm.original());
        assertThat(farm.book()).isRegularFile().isNotEqualTo(link);
        assertThat(Files.isSymbolicLink(farm.book())).isFalse();
        assertThat(farm.sibling("farm.before.xlsx")).hasBinaryContent(farm.original());
        assertThat(Farm.files(link.getParent()))
                .containsExactly(link.getFileName().toString());
    }

    @Test
    void linkStaysAndTheBookBehindItIsReplaced() throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        runsThrough(link(folder.resolve("desk/today.xlsx"), farm.book()), farm);
    }

    @Test
    void linkRelativeToItsFolderIsFollowed() throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        runsThrough(link(folder.resolve("desk/today.xlsx"), Path.of("../books/farm.xlsx")), farm);
    }

    @Test
    void linkToALinkIsFollowedToItsEnd() throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        Path first = link(folder.resolve("shelf/farm.xlsx"), farm.book());
        runsThrough(link(folder.resolve("desk/today.xlsx"), first), farm);
        assertThat(first).isSymbolicLink();
    }

    @Test
    void bookHeldUnderItsOwnNameIsHeldThroughALink() throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        Files.createFile(farm.sibling("~$farm.xlsx"));
        Path link = link(folder.resolve("desk/today.xlsx"), farm.book());

        farm.keptFrom(Ran.rickyard("run", link), "a spreadsheet program has it open");
        assertThat(link).isSymbolicLink();
    }

    @Test
    void targetThatIsALinkToTheBookIsTheBook() throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        Path link = link(folder.resolve("desk/today.xlsx"), farm.book());

        Ran ran = Ran.rickyard("run", farm.book(), "--to", link);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--to names the workbook itself");
        assertThat(Files.readAllBytes(farm.book())).isEqualTo(farm.original());
    }

    @Test
    void linkThatLeadsNowhereIsRefusedAsABook() throws Exception {
        Path link = link(folder.resolve("desk/today.xlsx"), Path.of("gone.xlsx"));

        Ran ran = Ran.rickyard("run", link);

        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err()).contains("\"today.xlsx\"").doesNotContain("Exception");
        assertThat(Farm.files(link.getParent())).containsExactly("today.xlsx");
    }

    @Test
    void targetLinkThatLeadsToNoFileYetMakesThatFile() throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        Path link = link(folder.resolve("desk/today.xlsx"), Path.of("../books/new.xlsx"));

        Ran ran = Ran.rickyard("run", farm.book(), "--to", link);

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(link).isSymbolicLink();
        assertThat(farm.files()).containsExactly("farm.xlsx", "new.xlsx");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../nowhere/new.xlsx", "today.xlsx"})
    void targetLinkThatCannotBeFollowedIsSaid(String goal) throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        Path link = link(folder.resolve("desk/today.xlsx"), Path.of(goal));

        Ran ran = Ran.rickyard("run", farm.book(), "--to", link);

        farm.keptFrom(ran, "\"today.xlsx\" was not written: it is a link that leads nowhere.");
        assertThat(farm.files()).containsExactly("farm.xlsx");
        assertThat(Farm.files(link.getParent())).containsExactly("today.xlsx");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Moor End, 2026/our farm.xlsx",
                "Gården/Åkrar & ängar.xlsx",
                "ферма/поля №1.xlsx",
                "農場/圃場 一覧.xlsx",
                "مزرعة/حقول.xlsx",
                "it's %20 #1/100% [new] (2).xlsx",
                "-strict/--to.xlsx"
            })
    void oddPathsReachAProcessOfItsOwnWhole(String name) throws Exception {
        Path book;
        try {
            book = folder.resolve(name);
        } catch (InvalidPathException plainLettersOnly) {
            Skips.unless(false, "this system's locale has no letters beyond a to z for file names");
            return;
        }
        Farm farm = Farm.in(book.getParent(), book.getFileName().toString());
        try (ChildRun run = ChildRun.start(folder, "run", farm.book())) {
            assertThat(run.end()).as(run.messages()).isZero();
            assertThat(run.messages()).contains("Wrote " + book.getFileName() + ".");
        }
        String former = book.getFileName().toString().replace(".xlsx", ".before.xlsx");
        assertThat(farm.sibling(former)).hasBinaryContent(farm.original());
        assertThat(farm.files())
                .containsExactlyInAnyOrder(former, book.getFileName().toString());
        try (BookPackage result = BookPackage.open(farm.book())) {
            assertThat(result.displayName()).isEqualTo(book.getFileName().toString());
        }
    }

    private Path pipe(String name) throws Exception {
        Path pipe = folder.resolve(name);
        boolean made;
        try {
            made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
        } catch (IOException notHere) {
            made = false;
        }
        Skips.unless(made, "named pipes cannot be made here");
        return pipe;
    }

    /** A file put in its place would leave whoever listens waiting; under /dev it would take a device from everybody. */
    @Test
    void jsonIsWrittenIntoAPipeAndThePipeStays() throws Exception {
        Farm farm = Farm.in(folder.resolve("books"));
        Path pipe = pipe("listening");
        Path heard = folder.resolve("heard.json");
        Process listener = new ProcessBuilder("cat", pipe.toString())
                .redirectOutput(heard.toFile())
                .start();
        try {
            Ran ran = Ran.rickyard("check", farm.book(), "--json", pipe);

            assertThat(ran.code()).as(ran.err()).isZero();
            assertThat(Files.readAttributes(pipe, BasicFileAttributes.class).isOther())
                    .isTrue();
            assertThat(listener.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(heard)
                    .content()
                    .startsWith("{\"format\":\"rickyard.results/1\"")
                    .endsWith("}\n");
            assertThat(Farm.files(folder)).containsExactlyInAnyOrder("books", "heard.json", "listening");
        } finally {
            listener.destroy();
        }
    }
}
