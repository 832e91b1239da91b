package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.workbook.open.RefusedException;

/**
 * Real workbooks, given by {@code -Drickyard.corpus=DIR}: each is either refused with a sentence, or comes through
 * with every foreign part packed as it was, no new finding of the linter, and readable if it was so before.
 */
class CorpusTest {
    private static final long LINTED_UP_TO = 2_000_000;

    @TempDir
    Path folder;

    private final Map<RefusedException.Reason, Integer> refused = new EnumMap<>(RefusedException.Reason.class);
    private final Map<String, String> faults = new TreeMap<>();
    private int grafted;
    private int readable;

    @Test
    void everyWorkbookComesThroughWholeOrIsRefusedWithASentence() throws IOException {
        String given = System.getProperty("rickyard.corpus");
        assumeTrue(given != null && !given.isBlank(), "no corpus given");
        Path fromHere = Path.of(given);
        Path corpus = Files.isDirectory(fromHere) ? fromHere : Path.of("..").resolve(given);
        assertThat(corpus)
                .as("the corpus given, from the module or from the project")
                .isDirectory();
        List<Path> files;
        try (Stream<Path> all = Files.walk(corpus)) {
            files = all.filter(file -> file.toString().toLowerCase(Locale.ROOT).matches(".*\\.xls[xmb]"))
                    .sorted()
                    .toList();
        }
        assertThat(files).isNotEmpty();
        for (Path file : files) {
            try {
                graft(file);
            } catch (Exception | AssertionError fault) {
                faults.put(file.getFileName().toString(), String.valueOf(fault));
            }
        }
        System.out.println("corpus: " + files.size() + " files, " + grafted + " grafted (" + readable
                + " readable by POI before and after), refused " + refused);
        assertThat(faults).isEmpty();
        assertThat(grafted
                        + refused.values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(files.size());
    }

    private void graft(Path file) throws Exception {
        Path once = folder.resolve("once.xlsx");
        Path twice = folder.resolve("twice.xlsx");
        Grafting grafting = Grafting.of("Work rates");
        try {
            grafting.run(file, once, 1, 1);
        } catch (RefusedException refusal) {
            assertThat(refusal.getMessage())
                    .startsWith("\"" + file.getFileName() + "\" ")
                    .endsWith(".");
            refused.merge(refusal.reason(), 1, Integer::sum);
            return;
        }
        grafting.run(once, twice, 1, 1);
        assertThat(Files.mismatch(once, twice))
                .as("a second run changes nothing")
                .isEqualTo(-1);
        if (Files.size(file) < LINTED_UP_TO) {
            List<String> worse = new ArrayList<>(PackageLinter.lint(once));
            PackageLinter.lint(file).forEach(worse::remove);
            assertThat(worse).isEmpty();
        }
        if (opens(file)) {
            assertThat(opens(once)).as("POI still reads it").isTrue();
            readable++;
        }
        grafted++;
    }

    /** Whether POI reads its workbook, styles and the start of every sheet. */
    private static boolean opens(Path file) {
        try (OPCPackage opened = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
            XSSFReader reader = new XSSFReader(opened);
            reader.getStylesTable();
            XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
            while (sheets.hasNext()) {
                try (InputStream sheet = sheets.next()) {
                    sheet.readNBytes(1000);
                    sheets.getSheetComments();
                }
            }
            return true;
        } catch (Exception unreadable) {
            return false;
        }
    }
}
