package org.rickyard.workbook.graft;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.PartNames;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.Relationship;

/** Finds part names that nothing in the package uses or so much as mentions. */
final class PartAllocator {
    private final Set<String> taken = new HashSet<>();

    PartAllocator(BookPackage source) throws RefusedException, IOException {
        for (ZipArchiveEntry entry : source.entries()) {
            taken.add(PartNames.key(entry.getName()));
        }
        source.contentTypes().overriddenKeys().forEach(taken::add);
        for (Relationship link : source.relationships(source.workbookPart())) {
            taken.add(PartNames.key(link.target()));
        }
    }

    /** The first free name of the form {@code stem + number + ending}, with its relationships free too. */
    String fresh(String stem, String ending) {
        return fresh(List.of(stem), ending).get(0);
    }

    /** The first number with which all the stems are free. */
    List<String> fresh(List<String> stems, String ending) {
        for (int number = 1; ; number++) {
            int current = number;
            List<String> names =
                    stems.stream().map(stem -> stem + current + ending).toList();
            if (names.stream().allMatch(this::free)) {
                names.forEach(name -> taken.add(PartNames.key(name)));
                return names;
            }
        }
    }

    private boolean free(String name) {
        return !taken.contains(PartNames.key(name)) && !taken.contains(PartNames.key(PartNames.relationshipsOf(name)));
    }
}
