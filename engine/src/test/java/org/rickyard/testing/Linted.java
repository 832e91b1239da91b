package org.rickyard.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.rickyard.workbook.graft.PackageLinter;

/** Our own linter of what office programs repair, run over every file that a test has the engine write. */
public final class Linted {
    private Linted() {}

    /** The file written has nothing against it that its input had not already. */
    public static Path after(Path input, Path written) {
        List<String> worse = new ArrayList<>(findings(written));
        if (!worse.isEmpty()) {
            findings(input).forEach(worse::remove);
        }
        assertThat(worse).as("linter of %s", written.getFileName()).isEmpty();
        return written;
    }

    /**
     * The same for workbooks in memory.
     *
     * @param input null if the file was made from nothing
     */
    public static byte[] after(byte[] input, byte[] written) {
        try {
            Path folder = ScratchFolders.create("rickyard-linted");
            Path after = Files.write(folder.resolve("after.xlsx"), written);
            Path before = folder.resolve("before.xlsx");
            if (input == null) {
                assertThat(findings(after)).as("linter").isEmpty();
            } else {
                after(Files.write(before, input), after);
            }
            Files.delete(after);
            Files.deleteIfExists(before);
            return written;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the linter has against a file. */
    public static List<String> findings(Path file) {
        try {
            return PackageLinter.lint(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
