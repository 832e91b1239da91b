package org.rickyard.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.StoredValues;

/**
 * The cells of result tables that a cell elsewhere shows again, on Trail or Summary, read off its formula. A copy of a
 * difference of large numbers is as blurred as the difference itself. A sheet is read only when it is asked for.
 */
final class Copies {
    private static final Pattern REFERENCE =
            Pattern.compile("(?:'((?:[^']|'')+)'|([\\p{L}\\d_.]+))!\\$?([A-Z]{1,3})\\$?(\\d+)");

    private final Path file;
    private final Map<String, Map<CellAddress, String>> formulas = new HashMap<>();

    Copies(Path file) {
        this.file = file;
    }

    List<CellAddress> of(CellAddress copy) {
        String formula = formulas.computeIfAbsent(copy.sheet(), sheet -> StoredValues.formulas(file, sheet))
                .getOrDefault(copy, "");
        List<CellAddress> cells = new ArrayList<>();
        Matcher references = REFERENCE.matcher(formula);
        while (references.find()) {
            String sheet = references.group(1) == null
                    ? references.group(2)
                    : references.group(1).replace("''", "'");
            cells.add(new CellAddress(
                    sheet,
                    Integer.parseInt(references.group(4)) - 1,
                    CellReference.convertColStringToIndex(references.group(3))));
        }
        return cells;
    }
}
