package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.rickyard.workbook.graft.OutputException;
import org.rickyard.workbook.graft.SafeReplacement;

/** A file named for output. */
final class OutputFile {
    private OutputFile() {}

    /** Begins to write it safely. */
    static SafeReplacement begin(Path file) throws OutputException {
        Path folder = file.toAbsolutePath().normalize().getParent();
        if (Files.isDirectory(file)) {
            throw failure(file, "it is a folder");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw failure(file, "there is no folder \"" + (folder == null ? "" : folder) + "\"");
        }
        return SafeReplacement.begin(file);
    }

    private static OutputException failure(Path file, String reason) {
        return OutputException.of(file, new NoSuchFileException(file.toString(), null, reason));
    }

    /** The ending of a file's name with its point, in small letters: ".xlsx"; "" if it has none. */
    static String ending(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
    }

    /** Whether two names lead to one file. */
    static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other)
                    ? Files.isSameFile(one, other)
                    : one.toAbsolutePath()
                            .normalize()
                            .equals(other.toAbsolutePath().normalize());
        } catch (IOException unknown) {
            return false;
        }
    }
}
