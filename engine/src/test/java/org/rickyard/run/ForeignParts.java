package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.PartNames;
import org.rickyard.workbook.open.RefusedException;

/** Compares the parts of two files by themselves, without the engine's own verification. */
final class ForeignParts {
    private ForeignParts() {}

    /**
     * Sees to it that every part of the original stands in the result with the same packed bytes, but for those four
     * that a run may add to.
     *
     * @return how many parts were compared
     */
    static int identical(Path original, Path result, GraftReport report) throws IOException, RefusedException {
        Set<String> edited = new HashSet<>();
        report.edited().forEach(part -> edited.add(PartNames.key(part)));
        try (BookPackage book = BookPackage.open(original)) {
            Set<String> allowed = new HashSet<>(Set.of(
                    PartNames.key("[Content_Types].xml"),
                    PartNames.key(book.workbookPart()),
                    PartNames.key(PartNames.relationshipsOf(book.workbookPart()))));
            book.stylesPart().ifPresent(part -> allowed.add(PartNames.key(part)));
            assertThat(allowed).as("parts that may be added to").containsAll(edited);
        }
        int compared = 0;
        try (ZipFile before = ZipFile.builder().setPath(original).get();
                ZipFile after = ZipFile.builder().setPath(result).get()) {
            for (ZipArchiveEntry entry : Collections.list(before.getEntries())) {
                if (edited.contains(PartNames.key(entry.getName()))) {
                    continue;
                }
                ZipArchiveEntry same = after.getEntry(entry.getName());
                assertThat(same).as("the part %s", entry.getName()).isNotNull();
                assertThat(after.getRawInputStream(same).readAllBytes())
                        .as("the packed bytes of %s", entry.getName())
                        .isEqualTo(before.getRawInputStream(entry).readAllBytes());
                compared++;
            }
        }
        return compared;
    }
}
