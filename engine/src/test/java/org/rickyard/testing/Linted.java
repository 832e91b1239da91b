package org.rickyard.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
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
        return after(findings(input), written);
    }

    /** The same where the input is gone by then, being replaced. */
    public static Path after(List<String> before, Path written) {
        List<String> worse = new ArrayList<>(findings(written));
        before.forEach(worse::remove);
        assertThat(worse).as("linter of %s", written.getFileName()).isEmpty();
        return written;
    }

    /** The same for a workbook in memory. */
    public static byte[] after(byte[] input, byte[] written) {
        try {
            Path folder = ScratchFolders.create("rickyard-linted");
            Path before = folder.resolve("before.xlsx");
            Path after = folder.resolve("after.xlsx");
            Files.copy(new ByteArrayInputStream(input), before);
            Files.copy(new ByteArrayInputStream(written), after);
            after(before, after);
            Files.delete(before);
            Files.delete(after);
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
