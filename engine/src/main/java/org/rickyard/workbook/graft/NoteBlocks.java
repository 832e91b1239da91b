package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/**
 * Hands out blocks of 1,024 shape numbers. Office programs reserve them for the whole workbook, one or more to each
 * drawing, and repair a workbook in which two drawings claim one block.
 */
final class NoteBlocks {
    /** Shapes in a block, its number 0 left out. */
    static final int SHAPES = 1023;

    private static final Pattern MAP = Pattern.compile("idmap\\b[^>]*?\\bdata\\s*=\\s*[\"']([0-9,\\s]*)[\"']");
    private static final Pattern SHAPE = Pattern.compile("_x0000_s([0-9]{4,9})");

    private final Set<Integer> taken = new HashSet<>();

    /** @param ours drawings that will be written anew, so that their blocks are free */
    NoteBlocks(BookPackage source, Set<String> ours) throws RefusedException, IOException {
        for (ZipArchiveEntry entry : source.entries()) {
            boolean drawing = entry.getName().toLowerCase(Locale.ROOT).endsWith(".vml");
            if (drawing && !ours.contains(entry.getName())) {
                String text = new String(source.bytes(entry.getName()), StandardCharsets.ISO_8859_1).replace("\0", "");
                for (Matcher map = MAP.matcher(text); map.find(); ) {
                    for (String number : map.group(1).split("[,\\s]+")) {
                        if (!number.isEmpty() && number.length() < 9) {
                            taken.add(Integer.parseInt(number));
                        }
                    }
                }
                for (Matcher shape = SHAPE.matcher(text); shape.find(); ) {
                    taken.add(Integer.parseInt(shape.group(1)) / (SHAPES + 1));
                }
            }
        }
    }

    /** Blocks for so many shapes. */
    List<Integer> take(int shapes) {
        List<Integer> blocks = new ArrayList<>();
        for (int block = 1; blocks.size() * SHAPES < shapes; block++) {
            if (taken.add(block)) {
                blocks.add(block);
            }
        }
        return blocks;
    }
}
