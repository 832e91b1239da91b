package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.cli.Ran;
import org.rickyard.testing.ExternalCommand;
import org.rickyard.testing.Skips;

/**
 * No leave to write. The system's administrator may write anything, so where the tests are run by that account, the
 * program is started without the privilege (setpriv), and so that modes bind it.
 */
class NotWritableTest {
    private static final String NOT_ALLOWED =
            " was not written: you are not allowed to write there. Choose another folder or ask its owner.";
    private static final String READ_ONLY =
            " was not written: it may only be read. Clear its read-only mark or write to another file.";

    @TempDir
    Path scratch;

    private Farm farm;

    @BeforeEach
    void makeAFarm() throws IOException {
        farm = Farm.in(scratch.resolve("farm"));
    }

    @AfterEach
    void allowItAgain() throws IOException {
        if (modesAreKnown()) {
            mode(farm.folder(), "rwx------");
        }
    }

    private boolean modesAreKnown() throws IOException {
        return Files.getFileStore(scratch).supportsFileAttributeView("posix");
    }

    private static void mode(Path file, String mode) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
    }

    /** The words in front of a command by which modes bind it; skips where they cannot be made to. */
    private List<String> bound() throws IOException {
        Skips.unless(modesAreKnown(), "this file system has no modes");
        Path shut = Files.createDirectory(scratch.resolve("shut"));
        mode(shut, "r-xr-xr-x");
        List<String> plain = List.of();
        List<String> without = List.of(
                "setpriv", "--bounding-set", "-dac_override,-dac_read_search,-fowner", "--inh-caps", "-dac_override");
        for (List<String> prefix : List.of(plain, without)) {
            if (prefix.isEmpty() || ExternalCommand.find(prefix.get(0)).isPresent()) {
                List<String> probe = new ArrayList<>(prefix);
                probe.addAll(List.of("touch", shut.resolve("probe").toString()));
                if (ExternalCommand.run(Duration.ofMinutes(1), probe).exit() != 0) {
                    return prefix;
                }
                Files.deleteIfExists(shut.resolve("probe"));
            }
        }
        Skips.unless(false, "modes do not bind this account, and setpriv is not there to make them");
        return plain;
    }

    private Ran bound(List<String> prefix, Object... args) throws Exception {
        try (ChildRun run = ChildRun.start(scratch, prefix, args)) {
            int code = run.end();
            return new Ran(code, "", run.messages());
        }
    }

    @Test
    void folderThatMayNotBeWrittenTo() throws Exception {
        List<String> prefix = bound();
        mode(farm.folder(), "r-xr-xr-x");

        farm.keptFrom(bound(prefix, "run", farm.book()), "\"farm.xlsx\"" + NOT_ALLOWED);

        assertThat(farm.files()).containsExactly("farm.xlsx");
        assertThat(bound(prefix, "check", farm.book()).code()).isZero();
        Ran aside = bound(prefix, "run", farm.book(), "--to", scratch.resolve("answers.xlsx"));
        assertThat(aside.code()).as(aside.err()).isZero();
    }

    @Test
    void bookThatMayNotBeWrittenTo() throws Exception {
        List<String> prefix = bound();
        mode(farm.book(), "r--r--r--");

        farm.keptFrom(bound(prefix, "run", farm.book()), "\"farm.xlsx\"" + READ_ONLY);

        assertThat(farm.files()).containsExactly("farm.xlsx");
    }

    @Test
    void bookThatMayNotBeReadIsRefused() throws Exception {
        List<String> prefix = bound();
        mode(farm.book(), "-w-------");

        Ran run = bound(prefix, "run", farm.book());
        Ran check = bound(prefix, "check", farm.book());

        mode(farm.book(), "rw-------");
        for (Ran ran : List.of(run, check)) {
            assertThat(ran.code()).as(ran.err()).isEqualTo(3);
            assertThat(ran.err()).contains("\"farm.xlsx\"", "you are not allowed to read it");
        }
        assertThat(farm.files()).containsExactly("farm.xlsx");
        assertThat(farm.book()).hasBinaryContent(farm.original());
    }

    @Test
    void targetFolderThatMayNotBeWrittenTo() throws Exception {
        List<String> prefix = bound();
        Path shut = scratch.resolve("shut");

        Ran workbook = bound(prefix, "run", farm.book(), "--to", shut.resolve("answers.xlsx"));
        Ran json = bound(prefix, "run", farm.book(), "--json", shut.resolve("answers.json"));
        Ran fresh = bound(prefix, "new", shut.resolve("fresh.xlsx"));

        farm.keptFrom(workbook, "\"answers.xlsx\"" + NOT_ALLOWED);
        farm.keptFrom(json, "\"answers.json\"" + NOT_ALLOWED);
        farm.keptFrom(fresh, "\"fresh.xlsx\"" + NOT_ALLOWED);
        assertThat(farm.files()).containsExactly("farm.xlsx");
        assertThat(shut).isEmptyDirectory();
    }

    @Test
    void folderMissingOrAFileInItsPlace() throws Exception {
        Path missing = scratch.resolve("nowhere");

        Ran nowhere = Ran.rickyard("run", farm.book(), "--to", missing.resolve("answers.xlsx"));
        Ran underAFile = Ran.rickyard("run", farm.book(), "--to", farm.book().resolve("answers.xlsx"));
        Path folder = Files.createDirectory(scratch.resolve("answers.xlsx"));
        Ran aFolder = Ran.rickyard("run", farm.book(), "--to", folder);

        farm.keptFrom(
                nowhere,
                "\"answers.xlsx\" was not written: the file could not be written (there is no folder \"" + missing
                        + "\").");
        farm.keptFrom(underAFile, "there is no folder \"" + farm.book() + "\"");
        farm.keptFrom(aFolder, "\"answers.xlsx\" was not written: the file could not be written (it is a folder).");
        assertThat(farm.files()).containsExactly("farm.xlsx");
        assertThat(folder).isEmptyDirectory();
    }
}
