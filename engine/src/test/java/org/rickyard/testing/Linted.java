package org.rickyard.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import org.rickyard.workbook.graft.PackageLinter;

/** Our own linter of what office programs repair, run over every file that a test has the engine write. */
public final class Linted {
    /** By fingerprints of whole files: many a test writes what another wrote before, or the very same again. */
    private static final Map<String, List<String>> KNOWN = new ConcurrentHashMap<>();

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

    /** What the linter has against a file; the same file, to the byte, is looked over once. */
    public static List<String> findings(Path file) {
        try {
            String fingerprint = fingerprint(file);
            List<String> known = KNOWN.get(fingerprint);
            if (known == null) {
                known = List.copyOf(PackageLinter.lint(file));
                KNOWN.put(fingerprint, known);
            }
            return known;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String fingerprint(Path file) throws IOException {
        byte[] content = Files.readAllBytes(file);
        CRC32 one = new CRC32();
        CRC32C other = new CRC32C();
        one.update(content);
        other.update(content);
        return content.length + " " + one.getValue() + " " + other.getValue();
    }
}
