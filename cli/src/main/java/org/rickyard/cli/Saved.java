package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * How a file was when it was looked at; where it has been saved since, this is not the same. Content is not asked, so
 * that looking costs nothing.
 *
 * @param modified when it was last written
 * @param size in bytes
 * @param key by which the disk knows it, another when a program saves by putting a new file in its place; empty where
 *     the disk has none
 */
record Saved(FileTime modified, long size, Optional<Object> key) {
    /** How a file is now; empty where there is none, as for a moment while some programs save. */
    static Optional<Saved> of(Path file) {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(new Saved(now.lastModifiedTime(), now.size(), Optional.ofNullable(now.fileKey())));
        } catch (IOException notThere) {
            return Optional.empty();
        }
    }
}
